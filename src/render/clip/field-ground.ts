import type { FieldMarkings } from '../field-scene.ts';
import type { View } from '../scene.ts';
import { marksToSvg } from '../svg.ts';
import { pxPerYard } from '../svg-styles.ts';
import { watchField } from '../watch-scene.ts';

/** Wider than any view of it, also one that has been turned round a man at the edge. */
const groundView: View = { left: -40, top: -30, width: 80, height: 85 };

/** How large the marks of every drawing are beside the field: yards in one of their units. */
export const yardsPerUnit = Math.round(1e6 / pxPerYard) / 1e6;

/** The ground in yards, as SVG, so that a page moves all of it by one change of a matrix. */
export function fieldGround(field: FieldMarkings): string {
  const { view, items } = watchField(field, { view: groundView, size: 'small' });
  return `<g transform="translate(${view.left} ${view.top}) scale(${yardsPerUnit})">${marksToSvg(items, view)}</g>`;
}
