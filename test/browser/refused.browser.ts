import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { fieldHand } from './field-hand.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { answersOnce, savedPlaybook, undoButton, wholeTask } from './play-place.ts';
import { fingersOn } from './touch.ts';

const stands = (page: Page, spot: string) => fieldHand(page).man(spot).getAttribute('aria-label');

describe('on the field', () => {
  browserTest(
    'a man is not put into the crease: the reason is said and nothing changes',
    wholeTask,
    async ({ page }) => {
      const before = await savedPlaybook(page);
      const field = fieldHand(page);
      const was = await stands(page, 'C');
      await field.drag(await field.manAt('C'), await field.at(0.5, 1), { hold: true });
      const reason = /lies inside the crease, where the offense may not be/;
      // Beside the pointer while he is held, and once more when he is let go.
      await field.plane.getByText(reason).waitFor();
      await page.mouse.up();
      await page.getByRole('status').filter({ hasText: reason }).waitFor();
      expect(await stands(page, 'C')).toBe(was);
      expect(await undoButton(page).isDisabled()).toBe(true);
      await answersOnce(page, (all) => all.length === 9 && all.every(({ difference }) => difference === undefined));
      await expectAccessible(page);
      await keepScreenshot(page, 'refused');
      expect(await savedPlaybook(page)).toEqual(before);
    },
  );

  browserTest('Escape gives up a drag, and a verb that waits for its man', wholeTask, async ({ page }) => {
    const field = fieldHand(page);
    const was = await stands(page, 'TR');
    await field.drag(await field.manAt('TR'), await field.at(11, 10), { hold: true });
    await page.getByRole('button', { name: 'TR, 11 yards right, 10 above the goal line' }).waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: was!, exact: true }).waitFor();
    await page.mouse.up();
    expect(await stands(page, 'TR')).toBe(was);

    await page.getByRole('group', { name: 'Steps of the play' }).getByRole('button').nth(1).click();
    await field.tap(await field.manAt('C'));
    const verbs = page.getByRole('group', { name: 'Tell C to' });
    await verbs.getByRole('button', { name: 'cut' }).click();
    await page.getByText('Escape gives it up.').waitFor();
    await expectAccessible(page);
    await page.keyboard.press('Escape');
    await page.getByText('Escape gives it up.').waitFor({ state: 'hidden' });
    await field.tap(await field.at(5, 8));
    expect(await undoButton(page).isDisabled()).toBe(true);
  });

  browserTest('a second finger gives up what the first began', wholeTask, async ({ visit, address }) => {
    const { page } = await visit({ viewport: { width: 820, height: 1180 }, hasTouch: true });
    await page.goto(address);
    const field = fieldHand(page);
    const fingers = await fingersOn(page);
    const was = await stands(page, 'TR');
    const from = await field.manAt('TR');
    const to = await field.at(11, 10);
    await fingers.down(from);
    await fingers.move(to);
    await page.getByRole('button', { name: 'TR, 11 yards right, 10 above the goal line' }).waitFor();
    await fingers.down(to, await field.at(0, 12));
    await page.getByRole('button', { name: was!, exact: true }).waitFor();
    await fingers.up();
    expect(await stands(page, 'TR')).toBe(was);
    expect(await undoButton(page).isDisabled()).toBe(true);
  });
});
