import type { Point } from '../../engine/index.ts';
import { pxPerYard, type View } from '../../render/index.ts';

/** The `viewBox` that shows a view: its upper left corner at 0,0, `pxPerYard` units a yard. */
export function viewBoxOf(view: View): string {
  return `0 0 ${view.width * pxPerYard} ${view.height * pxPerYard}`;
}

/** Where a place lies in that box. */
export function toBox(at: Point, view: View): Point {
  return { x: (at.x - view.left) * pxPerYard, y: (at.y - view.top) * pxPerYard };
}

/** A rectangle of the screen, CSS pixels. */
export interface ScreenBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The place under a pixel, when the view fills the box as far as its shape allows and lies in its middle (SVG's usual fit). */
export function placeAt(clientX: number, clientY: number, box: ScreenBox, view: View): Point {
  const scale = pixelsPerYard(box, view);
  const spareX = (box.width - view.width * scale) / 2;
  const spareY = (box.height - view.height * scale) / 2;
  return {
    x: view.left + (clientX - box.left - spareX) / scale,
    y: view.top + (clientY - box.top - spareY) / scale,
  };
}

/** CSS pixels that a yard takes. */
export function pixelsPerYard(box: ScreenBox, view: View): number {
  return Math.min(box.width / view.width, box.height / view.height);
}
