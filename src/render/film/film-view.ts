import { unitView } from '../field-scene.ts';
import type { View } from '../scene.ts';
import type { FilmBox } from './film-form.ts';
import type { FilmPart } from './film-part.ts';

/** The farthest that a film shows, so that one who stands far out shrinks nobody, and room round a man at the edge. Yards. */
const most = { half: 20, top: -13, bottom: 24 };
const margin = 1.8;
const offenseCount = 6;

/** The part of the field that a man-up is shown in: all ways of the six up to a bound, and more of the ground until it fills `box`. */
export function filmView({ places_byMan }: FilmPart, box: FilmBox): View {
  let half = unitView.width / 2;
  let top = unitView.top;
  let bottom = unitView.top + unitView.height;
  for (const { x, y } of places_byMan.slice(0, offenseCount).flat()) {
    half = Math.max(half, Math.min(Math.abs(x) + margin, most.half));
    top = Math.min(top, Math.max(y - margin, most.top));
    bottom = Math.max(bottom, Math.min(y + margin, most.bottom));
  }
  return filling({ left: -half, top, width: 2 * half, height: bottom - top }, box);
}

/** Grown to both sides alike, or toward midfield, until it has the box's proportion. */
function filling(view: View, { width, height }: FilmBox): View {
  const proportion = width / height;
  if (view.width < view.height * proportion) {
    const wider = view.height * proportion;
    return { ...view, left: -wider / 2, width: wider };
  }
  return { ...view, height: view.width / proportion };
}
