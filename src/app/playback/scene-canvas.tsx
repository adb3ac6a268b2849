import { type ReactNode, useEffect, useRef } from 'react';
import { drawScene, type PaletteName, type SceneLayer } from '../../render/index.ts';
import type { Player } from './player.ts';
import type { Playhead } from './playhead.ts';
import styles from './scene-canvas.module.css';

export interface SceneCanvasProps {
  readonly player: Player;
  /** What never moves: drawn once, kept as a picture. */
  readonly ground: SceneLayer;
  /** What is seen at a moment; nothing while there is nothing to play. */
  readonly moment: ((head: Playhead) => SceneLayer) | undefined;
  readonly palette: PaletteName;
  /** What the picture is, in words. */
  readonly words: string;
}

/** A field that is played: the player's time comes straight to the canvas and never goes through React. */
export function SceneCanvas({ player, ground, moment, palette, words }: SceneCanvasProps): ReactNode {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const element = canvas.current;
    const pen = element?.getContext('2d');
    if (element === null || pen === null || pen === undefined) return undefined;
    let backdrop: HTMLCanvasElement | undefined;

    const draw = (head: Playhead): void => {
      if (element.width === 0 || element.height === 0) return;
      backdrop ??= pictureOf(ground, element.width, element.height, palette);
      pen.drawImage(backdrop, 0, 0);
      const layer = moment?.(head);
      if (layer !== undefined) drawScene(pen, layer, { palette, ...fit(layer, element.width, element.height) });
    };
    const resize = (): void => {
      const ratio = window.devicePixelRatio;
      const [width, height] = [Math.round(element.clientWidth * ratio), Math.round(element.clientHeight * ratio)];
      if (width !== element.width || height !== element.height) {
        element.width = width;
        element.height = height;
        backdrop = undefined;
      }
      draw(player.head());
    };
    resize();
    const watched = new ResizeObserver(resize);
    watched.observe(element);
    const stop = player.onFrame(draw);
    return () => {
      watched.disconnect();
      stop();
    };
  }, [player, ground, moment, palette]);
  return <canvas ref={canvas} className={styles.canvas} role="img" aria-label={words} />;
}

function pictureOf(ground: SceneLayer, width: number, height: number, palette: PaletteName): HTMLCanvasElement {
  const picture = document.createElement('canvas');
  picture.width = width;
  picture.height = height;
  const pen = picture.getContext('2d');
  if (pen !== null) drawScene(pen, ground, { palette, ...fit(ground, width, height) });
  return picture;
}

/** How a view lies in a canvas of so many screen pixels: as large as fits, in the middle. */
function fit({ view }: SceneLayer, width: number, height: number) {
  const ratio = window.devicePixelRatio;
  const pxPerYard = Math.min(width / view.width, height / view.height) / ratio;
  return {
    pxPerYard,
    devicePixelRatio: ratio,
    leftPx: (width / ratio - view.width * pxPerYard) / 2,
    topPx: (height / ratio - view.height * pxPerYard) / 2,
  };
}
