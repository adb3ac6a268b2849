import type { Page } from 'playwright-core';
import { readRecord } from './page-record.ts';

/** Pictures of the looped play, all fields in step. */
export interface Playback {
  /** Milliseconds from each picture to the next. */
  readonly frames: readonly number[];
  readonly longTasks: number;
}

/** Has the play run in a loop for so many seconds and takes the time of every picture. */
export async function measurePlayback(page: Page, seconds: number): Promise<Playback> {
  await keepPlaying(page);
  const before = await readRecord(page);
  const frames = await page.evaluate(
    (milliseconds) =>
      new Promise<number[]>((resolve) => {
        const deltas: number[] = [];
        let last = 0;
        let end = 0;
        const frame = (now: number) => {
          if (last > 0) deltas.push(now - last);
          else end = now + milliseconds;
          last = now;
          if (now < end) requestAnimationFrame(frame);
          else resolve(deltas);
        };
        requestAnimationFrame(frame);
      }),
    seconds * 1000,
  );
  const after = await readRecord(page);
  return { frames, longTasks: after.longTasks.length - before.longTasks.length };
}

/** Presses what a coach would press: play, and begin again at the end. */
export async function keepPlaying(page: Page): Promise<void> {
  const controls = page.getByRole('group', { name: 'Playing' });
  const again = controls.getByRole('button', { name: 'Begin again at the end' });
  if ((await again.getAttribute('aria-pressed')) !== 'true') await again.click();
  const play = controls.getByRole('button', { name: 'Play', exact: true });
  if (await play.isVisible()) await play.click();
}
