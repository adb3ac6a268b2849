import type { Locator } from 'playwright-core';
import { describe, expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { fieldHand, type PagePoint } from './field-hand.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { answersOnce, makeFirstPlay, savedPlay, seenOnce, startEmpty, step, wholeTask } from './play-place.ts';

async function middleOf(part: Locator): Promise<PagePoint> {
  await part.scrollIntoViewIfNeeded();
  const box = await part.boundingBox();
  if (box === null) throw new Error('it is not on the page');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

browserTest('a play is written and looked through on its tempo chart', wholeTask, async ({ page }) => {
  await startEmpty(page);
  await makeFirstPlay(page, 'Harbor', '2-2-2 low');
  const { drag } = fieldHand(page);
  const chart = page.getByRole('figure', { name: 'The play over time' });
  const mark = (beat: string) => chart.getByRole('button', { name: new RegExp(`^"${beat}" starts `) });
  const row = (spot: string) => chart.locator('text', { hasText: new RegExp(`^${spot}$`) }).first();
  const isNow = (name: string) =>
    seenOnce(
      page,
      () => step(page, name).getAttribute('aria-current'),
      (now) => now === 'step',
    );

  // The ball's line is drawn from its row to another: a pass.
  await row('TR').scrollIntoViewIfNeeded();
  const start = { x: (await mark('step-1').boundingBox())!.x + 6, y: (await middleOf(row('TR'))).y };
  await drag(start, { x: start.x + 4, y: (await middleOf(row('TL'))).y });
  await page.getByText('TR passes to TL', { exact: true }).waitFor();

  // A second step on a call, whose mark is moved along.
  await page.getByRole('button', { name: 'Step', exact: true }).click();
  await isNow('step-2');
  await page.getByRole('group', { name: 'Starts when' }).getByLabel('Starts when').selectOption('call');
  const seconds = page.getByLabel('Seconds after it');
  const called = Number(await seconds.inputValue());
  const from = await middleOf(mark('step-2'));
  await drag(from, { x: from.x + 60, y: from.y });
  const later = Number(
    await seenOnce(
      page,
      () => seconds.inputValue(),
      (value) => Number(value) > called,
    ),
  );
  // Escape leaves it where it was.
  const again = await middleOf(mark('step-2'));
  await drag(again, { x: again.x + 60, y: again.y }, { hold: true });
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await mark('step-2').focus();
  await page.keyboard.press('ArrowLeft');
  const nudged = Number(
    await seenOnce(
      page,
      () => seconds.inputValue(),
      (value) => Number(value) !== later,
    ),
  );
  expect(nudged).toBeCloseTo(later - 0.1);

  // A click on a step's mark chooses the step; on a man's row also the man.
  await mark('step-1').click();
  await isNow('step-1');
  await mark('step-2').click();
  await isNow('step-2');
  const place = await middleOf(row('CR'));
  await page.mouse.click(start.x + 4, place.y);
  await isNow('step-1');
  await page.getByRole('group', { name: 'Tell CR to' }).waitFor();

  // Elsewhere the playhead follows the pointer, there and back.
  await answersOnce(page, (all) => all.length === 9);
  const playing = page.getByRole('group', { name: 'Playing' });
  const now = () => playing.getByLabel('Time in the play').inputValue().then(Number);
  const empty = { x: start.x + 10, y: (await middleOf(row('WL'))).y };
  await drag(empty, { x: empty.x + 120, y: empty.y }, { hold: true });
  await playing.getByRole('button', { name: 'Play' }).waitFor();
  const there = await now();
  await page.mouse.move(empty.x + 60, empty.y, { steps: 4 });
  const back = await seenOnce(page, now, (time) => time < there);
  await page.mouse.up();
  expect(back).toBeGreaterThan(0);
  await playing.getByRole('button', { name: 'On to the next event' }).click();
  const next = await seenOnce(page, now, (time) => time > back);
  await playing.getByRole('button', { name: 'Back to the event before' }).click();
  await seenOnce(page, now, (time) => time < next);
  await expectAccessible(page);
  await keepScreenshot(page, 'tempo-chart');

  expect((await savedPlay(page, 'Harbor')).beats).toEqual([
    { id: 'step-1', on: 'start', do: ['TR pass TL'] },
    { id: 'step-2', on: `call step-1 + ${nudged}`, do: [] },
  ]);
});

describe('the playing', () => {
  browserTest('is on from the first moment', wholeTask, async ({ visit, address }) => {
    const { page } = await visit({ reducedMotion: 'no-preference' });
    await page.goto(address);
    await answersOnce(page, (all) => all.length === 9);
    const playing = page.getByRole('group', { name: 'Playing' });
    await playing.getByRole('button', { name: 'Pause' }).waitFor();
    const now = () => playing.getByLabel('Time in the play').inputValue().then(Number);
    const time = await now();
    await seenOnce(page, now, (later) => later !== time);
  });

  browserTest('waits to be asked where the device asks for less motion', wholeTask, async ({ page }) => {
    const playing = page.getByRole('group', { name: 'Playing' });
    const now = () => playing.getByLabel('Time in the play').inputValue().then(Number);
    await playing.getByRole('button', { name: 'Play' }).waitFor();
    const time = await now();
    // The first answers, and sharper ones after them, bring it no nearer to moving.
    await answersOnce(page, (all) => all.length === 9 && all.every(({ isGuess }) => !isGuess));
    await page
      .getByRole('region', { name: 'Against the schemes' })
      .getByRole('button', { name: /goals a chance/ })
      .first()
      .click();
    await page.getByRole('region', { name: /^What comes open against/ }).waitFor();
    expect(await playing.getByRole('button', { name: 'Pause' }).count()).toBe(0);
    expect(await now()).toBe(time);
    await expectAccessible(page);
    await playing.getByRole('button', { name: 'Play' }).click();
    await seenOnce(page, now, (later) => later !== time);
  });
});
