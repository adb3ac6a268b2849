import { memo, type ReactNode } from 'react';
import { marksToSvg, type PaletteName, type Primitive, type View } from '../../render/index.ts';

/** Shapes of a scene inside an SVG element: the very text that a printed page gets, so that screen and paper show the same. */
export const SceneMarks = memo(function SceneMarks({
  items,
  view,
  palette,
}: {
  readonly items: readonly Primitive[];
  readonly view: View;
  readonly palette: PaletteName;
}): ReactNode {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the text is made by marksToSvg, which escapes every letter that a user typed
  return <g dangerouslySetInnerHTML={{ __html: marksToSvg(items, view, palette) }} />;
});
