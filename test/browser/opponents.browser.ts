import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

/** Milliseconds in which an answer comes even on a busy machine. */
const patience = 90_000;

/** Opens a place by its address and waits until it is there: it is loaded when somebody goes there. */
async function goTo(page: Page, address: string, place: string): Promise<void> {
  await page.goto(`${address}#/opponents${place}`);
  await page
    .getByRole('navigation', { name: 'Opponents and own schemes' })
    .or(page.getByRole('article'))
    .first()
    .waitFor();
}

/** The goals a chance that stand beside the grid, once they are no first guess: with their interval. */
async function worthOfGrid(page: Page): Promise<string> {
  const line = page.getByText(/^\.\d\d goals a chance by .* \(\.\d\d to .*\)$/);
  await line.waitFor({ timeout: patience });
  return (await line.textContent()) ?? '';
}

browserTest(
  'an opponent is added, with what he plays, how often, and a loose crease man',
  async ({ page, address }) => {
    await goTo(page, address, '');
    await expectAccessible(page);
    await keepScreenshot(page, 'opponents');
    await page.getByLabel('Whom you play next').fill('Alder Creek');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Alder Creek' }).waitFor();
    await page.getByText('Nothing is known yet.').waitFor();
    await page.getByText('This is told as soon as there is a scheme that they play.').waitFor();
    await expectAccessible(page);

    await page.getByRole('button', { name: 'Add a scheme' }).click();
    await page.getByRole('checkbox', { name: /^Box-and-one zone/ }).check();
    await page.getByRole('checkbox', { name: /^Jump/ }).check();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Done' }).click();
    const box = page.getByRole('slider', { name: 'How often they play Box-and-one zone' });
    expect(await box.getAttribute('aria-valuetext')).toBe('50 % of the time');
    await box.focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    expect(await box.getAttribute('aria-valuetext')).toBe('52 % of the time');
    await box.fill('75');
    expect(await box.getAttribute('aria-valuetext')).toBe('75 % of the time');
    // One scale for all of them: where a knob stands is how often.
    const jump = page.getByRole('slider', { name: 'How often they play Jump' });
    expect([await jump.inputValue(), await jump.getAttribute('max')]).toEqual(['25', await box.getAttribute('max')]);

    // Whom "c" means is found on the picture; there he is chosen, and his grade has the focus.
    await page.getByRole('button', { name: /^c: / }).click();
    expect(await page.evaluate(() => document.activeElement?.closest('li')?.dataset.man)).toBe('c');
    await page.getByLabel('c, middle, short stick').selectOption('Loose');
    await page.getByRole('button', { name: 'c: loose' }).waitFor();

    const worths = page.getByRole('region', { name: 'What our plays are worth' });
    await expect.poll(() => worths.getByText(/\(\.\d\d to \.\d\d\)/).count(), { timeout: patience }).toBe(3);
    // What lies half under the masthead is not too small, it is scrolled.
    await page.evaluate(() => window.scrollTo({ top: 0, behavior: 'instant' }));
    await expectAccessible(page);
    await keepScreenshot(page, 'opponent');
    const means = await worths.locator('tbody tr td:nth-of-type(1)').allTextContents();
    expect(means.map(Number)).toEqual([...means.map(Number)].sort((one, other) => other - one));

    await page.reload();
    await page.getByRole('heading', { name: 'Alder Creek' }).waitFor();
    expect(await page.getByLabel('c, middle, short stick').inputValue()).toBe('loose');
    expect(await box.getAttribute('aria-valuetext')).toBe('75 % of the time');

    await page.getByRole('button', { name: 'More for Alder Creek' }).click();
    await page.getByRole('menuitem', { name: 'Delete this opponent' }).click();
    await page.getByText('Alder Creek is deleted; undo brings it back.').waitFor();
    await page.getByRole('button', { name: 'Undo: delete Alder Creek' }).click();
    await page.getByRole('link', { name: /^Alder Creek Box-and-one zone 75 %, Jump 25 %/ }).waitFor();
  },
);

browserTest(
  'a scheme of their own is begun as the box, a cell is changed by keys, and the answer changes',
  async ({ page, address }) => {
    await goTo(page, address, '/copper-falls');
    await page.getByRole('button', { name: 'Write one of theirs' }).click();
    await page.getByLabel('It begins as').selectOption('Box-and-one zone');
    await page.getByLabel('What you call it').fill('Falls box');
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Write it' }).click();
    await page.getByRole('article', { name: 'Falls box' }).waitFor();
    await page.getByText('Played by Copper Falls').waitFor();
    await page.getByLabel('With the play').selectOption('with Lantern');
    await worthOfGrid(page);
    await expectAccessible(page);

    // By keys alone: to a cell, a letter opens it, Enter takes what it means.
    await page.getByRole('button', { name: /^tr, ball at TR: on the ball/ }).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('l');
    await page.getByRole('combobox', { name: 'Duty, typed' }).waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'duty-chooser');
    await page.keyboard.type('ock wr');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'tl, ball at TR: locks WR' }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
      'tl, ball at TR: locks WR',
    );
    await page.getByText(/ by your last change$/).waitFor({ timeout: patience });

    // By pointer: the duty, then the man.
    await page.getByRole('button', { name: /^c, ball at TR:/ }).click();
    await page.getByRole('button', { name: 'Split', exact: true }).click();
    await page.getByRole('button', { name: 'X', exact: true }).click();
    await page.getByRole('button', { name: 'C', exact: true }).click();
    await page.getByRole('button', { name: 'c, ball at TR: splits X and C' }).waitFor();
    await page.getByRole('button', { name: 'Mirror TR to TL' }).click();
    await page.getByRole('button', { name: 'tr, ball at TL: locks WL' }).waitFor();

    await page.getByRole('radio', { name: 'Play it' }).click();
    await page.getByRole('img', { name: 'Lantern as it runs against the grid' }).waitFor({ timeout: patience });
    await expectAccessible(page);
    await keepScreenshot(page, 'own-scheme');
    for (let taken = 0; taken < 3; taken++) await page.getByRole('button', { name: /^Undo: / }).click();
    await page.getByRole('button', { name: 'tl, ball at TR: plays TL' }).waitFor();
  },
);

browserTest(
  'a grid that cannot be played says so where it is wrong, and is played again when it is mended',
  async ({ page, address }) => {
    await goTo(page, address, '/northgate-net');
    await page.getByRole('button', { name: /^tr, ball at TR: on the ball/ }).focus();
    await page.keyboard.press('Delete');
    await page.getByRole('button', { name: 'tr, ball at TR: at home' }).waitFor();
    await page.getByText('With the ball at TR nobody in').waitFor();
    await expectAccessible(page);

    await page.getByRole('radio', { name: 'Homes' }).click();
    const man = page.getByRole('button', { name: /^tl, 5 yards left/ });
    const before = await man.getAttribute('aria-label');
    await man.focus();
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => page.getByRole('button', { name: before ?? '', exact: true }).count()).toBe(0);
    await expectAccessible(page);
    await keepScreenshot(page, 'own-scheme-homes');

    await page.getByRole('button', { name: /^tr, ball at TR/ }).focus();
    await page.keyboard.press('b');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'tr, ball at TR: on the ball' }).waitFor();
    expect(await page.getByText('With the ball at TR nobody in').count()).toBe(0);
  },
);

browserTest('on a phone in the sun everything is there', async ({ visit, address }) => {
  const { page } = await visit({ viewport: { width: 360, height: 740 }, hasTouch: true });
  await page.addInitScript(() => localStorage.setItem('sliderule:look', 'sun'));
  for (const place of ['', '/northgate', '/northgate-net']) {
    await goTo(page, address, place);
    await expectAccessible(page);
    const tooSmall = await page
      .getByRole('main')
      .getByRole('button')
      .evaluateAll((buttons) =>
        buttons
          .map((button) => ({
            name: button.getAttribute('aria-label') ?? button.textContent,
            box: button.getBoundingClientRect(),
          }))
          .filter(({ box }) => box.height > 0 && (box.height < 24 || box.width < 24))
          .map(({ name }) => name),
      );
    expect(tooSmall).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  }
});

browserTest(
  'shots on their goalkeeper are set by press and by keys, and few of them say nothing',
  async ({ page, address }) => {
    await goTo(page, address, '/copper-falls');
    const keeper = page.getByRole('region', { name: 'Their goalkeeper' });
    const mouth = keeper.getByRole('button', { name: /^Mouth of the goal/ });
    await mouth.scrollIntoViewIfNeeded();
    // Low on the shooter's left: a quarter of the way in, three quarters of the way down.
    const box = (await mouth.boundingBox())!;
    await page.mouse.click(box.x + box.width / 4, box.y + (3 * box.height) / 4);
    await keeper.getByRole('row', { name: /^Low, shooter’s left 1 of 1 .* cannot be told/ }).waitFor();
    await keeper.getByText('Saved', { exact: true }).click();
    await mouth.focus();
    for (const key of ['ArrowRight', 'ArrowRight', 'ArrowUp', 'Enter']) await page.keyboard.press(key);
    await keeper.getByRole('row', { name: /^High, shooter’s right 0 of 1/ }).waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'keeper');
    await page.getByRole('button', { name: 'Undo: mark a save' }).click();
    await keeper.getByRole('row', { name: /^High, shooter’s right none seen/ }).waitFor();
    await keeper.getByRole('button', { name: 'Take out the last shot' }).click();
    await keeper.getByRole('row', { name: /^Low, shooter’s left none seen/ }).waitFor();
  },
);
