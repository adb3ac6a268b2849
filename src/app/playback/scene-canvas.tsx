import { type ReactNode, useEffect, useRef } from 'react';
import { drawScene, type PaletteName, type SceneLayer } from '../../render/index.ts';
import { fitLayer } from './fit-layer.ts';
import { groundPicture } from './ground-picture.ts';
import type { Player } from './player.ts';
import type { Playhead } from './playhead.ts';
import styles from './scene-canvas.module.css';

export interface SceneCanvasProps {
  readonly player: Player;
  /** What never moves: drawn once, kept as a picture. */
  readonly ground: SceneLayer;
  /** What is seen at a moment, where a yard takes so many pixels of the page; nothing while there is nothing to play. */
  readonly moment: ((head: Playhead, pxPerYard: number) => SceneLayer) | undefined;
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
    const draw = (head: Playhead): void => {
      if (element.width === 0 || element.height === 0) return;
      pen.drawImage(groundPicture(ground, element.width, element.height, palette), 0, 0);
      if (moment === undefined) return;
      const place = fitLayer(ground, element.width, element.height);
      drawScene(pen, moment(head, place.pxPerYard), { palette, ...place });
    };
    const resize = (): void => {
      const ratio = window.devicePixelRatio;
      const [width, height] = [Math.round(element.clientWidth * ratio), Math.round(element.clientHeight * ratio)];
      if (width !== element.width || height !== element.height) {
        element.width = width;
        element.height = height;
      }
      draw(player.head());
    };
    // It tells of the size that there is, too: after the layout of the next picture, so that nobody has to ask for one in between.
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
