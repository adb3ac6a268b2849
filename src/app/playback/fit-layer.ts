import type { SceneLayer } from '../../render/index.ts';

/** How a view lies in a canvas of so many screen pixels: as large as fits, in the middle. */
export function fitLayer({ view }: SceneLayer, width: number, height: number) {
  const ratio = window.devicePixelRatio;
  const pxPerYard = Math.min(width / view.width, height / view.height) / ratio;
  return {
    pxPerYard,
    devicePixelRatio: ratio,
    leftPx: (width / ratio - view.width * pxPerYard) / 2,
    topPx: (height / ratio - view.height * pxPerYard) / 2,
  };
}
