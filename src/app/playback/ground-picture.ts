import { drawScene, type PaletteName, type SceneLayer } from '../../render/index.ts';
import { fitLayer } from './fit-layer.ts';

/** What never moves, as a picture of so many screen pixels. Fields that are alike share one, as the small fields of all schemes do. */
export function groundPicture(
  ground: SceneLayer,
  width: number,
  height: number,
  palette: PaletteName,
): HTMLCanvasElement {
  const pictures = kept.get(ground) ?? new Map<string, HTMLCanvasElement>();
  kept.set(ground, pictures);
  const key = `${width} ${height} ${palette} ${window.devicePixelRatio}`;
  const known = pictures.get(key);
  if (known !== undefined) return known;
  // Sizes that a window only passed through while it was pulled are let go, the oldest first.
  if (pictures.size >= mostKept) pictures.delete(pictures.keys().next().value ?? '');
  const picture = draw(ground, width, height, palette);
  pictures.set(key, picture);
  return picture;
}

const kept = new WeakMap<SceneLayer, Map<string, HTMLCanvasElement>>();
const mostKept = 2;

function draw(ground: SceneLayer, width: number, height: number, palette: PaletteName): HTMLCanvasElement {
  const picture = document.createElement('canvas');
  picture.width = width;
  picture.height = height;
  const pen = picture.getContext('2d');
  if (pen !== null) drawScene(pen, ground, { palette, ...fitLayer(ground, width, height) });
  return picture;
}
