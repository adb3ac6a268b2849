import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { fieldHand, type PagePoint } from './field-hand.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { savedPlaybook, step, wholeTask } from './play-place.ts';

/** Where the six stand, yards, from left to right. */
async function placesOf(page: Page): Promise<readonly PagePoint[]> {
  const field = fieldHand(page);
  const [goal, yard] = [await field.at(0, 0), await field.at(1, 0)];
  const spots = await field.plane.getByRole('button', { name: /^[A-Z]{1,2}, / }).evaluateAll((all) =>
    all.map((man) => {
      const { left, top, width, height } = man.querySelector('circle')!.getBoundingClientRect();
      return { x: left + width / 2, y: top + height / 2 };
    }),
  );
  const yards = (pixels: number): number => Math.round((10 * pixels) / (yard.x - goal.x)) / 10 + 0;
  return inOrder(spots.map(({ x, y }) => ({ x: yards(x - goal.x), y: yards(y - goal.y) })));
}

const inOrder = (places: readonly PagePoint[]) => [...places].sort((a, b) => a.x - b.x || a.y - b.y);
const mirrorOf = (places: readonly PagePoint[]) => inOrder(places.map(({ x, y }) => ({ x: 0 - x, y })));

browserTest(
  'a play run from the left is its mirror image, and what is changed there is kept turned back',
  wholeTask,
  async ({ page }) => {
    const field = fieldHand(page);
    await step(page, 'set').click();
    await field.dragMan('TR', 9, 12);
    await page.getByRole('button', { name: 'TR, 9 yards right, 12 above the goal line' }).waitFor();
    const right = await placesOf(page);
    const written = await savedPlaybook(page);
    expect(mirrorOf(right)).not.toEqual(right);

    await page.getByRole('radio', { name: 'Left' }).click();
    await page.getByRole('button', { name: 'TL, 9 yards left, 12 above the goal line' }).waitFor();
    expect(await placesOf(page)).toEqual(mirrorOf(right));
    expect(await savedPlaybook(page)).toEqual(written);

    // The man on top at the left is the one who is written on the right.
    await field.dragMan('TL', -10, 11);
    await page.getByRole('button', { name: 'TL, 10 yards left, 11 above the goal line' }).waitFor();
    expect((await savedPlaybook(page)).plays[0]?.spots).toMatchObject({ TR: [10, 11] });
    await expectAccessible(page);
    await keepScreenshot(page, 'run-from-the-left');

    await page.getByRole('radio', { name: 'Right' }).click();
    await page.getByRole('button', { name: 'TR, 10 yards right, 11 above the goal line' }).waitFor();
    const before = await savedPlaybook(page);
    const turnOver = async () => {
      await page.getByRole('button', { name: 'More for this play' }).click();
      await page.getByRole('menuitem', { name: 'Mirror it' }).click();
    };
    await turnOver();
    await page.getByRole('button', { name: 'TL, 10 yards left, 11 above the goal line' }).waitFor();
    expect(await savedPlaybook(page)).not.toEqual(before);
    await turnOver();
    await page.getByRole('button', { name: 'TR, 10 yards right, 11 above the goal line' }).waitFor();
    expect(await savedPlaybook(page)).toEqual(before);
  },
);
