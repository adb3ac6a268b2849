import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { fieldHand } from './field-hand.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { makeFirstPlay, redoButton, savedPlaybook, startEmpty, step, undoButton, wholeTask } from './play-place.ts';

/** Presses a button until it has nothing left to do; gives what it said each time that it would do. */
async function pressAll(page: Page, button: Locator): Promise<readonly string[]> {
  const done: string[] = [];
  while (await button.isEnabled()) {
    const label = (await button.getAttribute('aria-label')) ?? '';
    done.push(label.replace(/^(Undo|Redo): /, ''));
    await button.click();
    // The next is read when the page shows it.
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
  }
  return done;
}

browserTest('all that was done is undone to the beginning, and done again', wholeTask, async ({ page }) => {
  const beginning = await savedPlaybook(page);
  await startEmpty(page);
  await makeFirstPlay(page, 'Harbor', '2-2-2 low');
  const field = fieldHand(page);
  await step(page, 'set').click();
  await field.dragMan('TR', 9, 13);
  await step(page, 'step-1').click();
  await field.dragOnto('TR', 'TL');
  await field.dragMan('CR', 5, 4);
  await field.dragOnto('TL', 'WL');
  await page.getByRole('region', { name: 'Step step-2' }).waitFor();
  await page.getByRole('form', { name: 'Teach a read' }).getByRole('button', { name: 'Teach' }).click();
  await page
    .getByRole('button', { name: 'Take out: TL passes to WL' })
    .or(page.getByRole('button', { name: 'Take out: TL skips to WL' }))
    .click();
  const end = await savedPlaybook(page);

  const undone = await pressAll(page, undoButton(page));
  expect(undone).toHaveLength(8);
  expect(await savedPlaybook(page)).toEqual(beginning);
  await expectAccessible(page);
  await keepScreenshot(page, 'all-undone');

  const redone = await pressAll(page, redoButton(page));
  expect(redone).toEqual([...undone].reverse());
  expect(await savedPlaybook(page)).toEqual(end);
  await expectAccessible(page);
  await keepScreenshot(page, 'all-redone');
});
