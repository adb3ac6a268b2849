import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { fieldHand } from './field-hand.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { answersOnce, undoButton, wholeTask } from './play-place.ts';
import { waitUntilKept } from './wait-until-kept.ts';

/** Where the demo's first play has its left top man, and where these tests drag him to. */
const before = 'TL, 7 yards left, 14 above the goal line';
const after = 'TL, 10 yards left, 12 above the goal line';

// By its text: behind a window nothing has a role.
const savedHere = (page: Page) => page.getByText('Saved here', { exact: true });
const standsAt = (page: Page, words: string) => page.getByRole('button', { name: words, exact: true }).waitFor();

async function moveAway(page: Page): Promise<void> {
  await standsAt(page, before);
  await fieldHand(page).dragMan('TL', -10, 12);
  await standsAt(page, after);
  await savedHere(page).waitFor();
}

describe('what was written', () => {
  browserTest('is there after a reload', wholeTask, async ({ page }) => {
    await moveAway(page);
    await page.reload();
    await standsAt(page, after);
    await answersOnce(page, (all) => all.length === 9);
    await expectAccessible(page);
    await keepScreenshot(page, 'found-again');
  });

  browserTest('is there after the page was killed in the middle of a drag', wholeTask, async ({ visit, address }) => {
    const { page, context, faults } = await visit();
    faults.expect(/the page crashed/);
    await page.goto(address);
    await moveAway(page);
    const field = fieldHand(page);
    await field.drag(await field.manAt('TR'), await field.at(10, 12), { hold: true });
    const crashed = page.waitForEvent('crash');
    const tools = await context.newCDPSession(page);
    // It never answers: there is nobody left to.
    void tools.send('Page.crash').catch(() => undefined);
    await crashed;

    const another = await context.newPage();
    await another.goto(address);
    await standsAt(another, after);
    // The drag was not over: he stands where he stood.
    await standsAt(another, 'TR, 7 yards right, 14 above the goal line');
    await another.getByRole('region', { name: 'The field' }).waitFor();
    await expectAccessible(another);
  });

  browserTest(
    'is there when the tab was closed without a word while notes were typed',
    wholeTask,
    async ({ visit, address }) => {
      const { page, context } = await visit();
      await page.goto(address);
      await page.getByRole('button', { name: 'More for this play' }).click();
      await page.getByRole('menuitem', { name: 'Name, tags and notes' }).click();
      const notes = page.getByRole('dialog').getByLabel('Notes');
      await notes.fill('Worked on Tuesday');
      await notes.press('End');
      await page.keyboard.type(' and on Friday');
      await savedHere(page).waitFor();
      await expectAccessible(page);
      await page.close({ runBeforeUnload: false });

      const another = await context.newPage();
      await another.goto(address);
      await another.getByRole('button', { name: 'More for this play' }).click();
      await another.getByRole('menuitem', { name: 'Name, tags and notes' }).click();
      expect(await another.getByRole('dialog').getByLabel('Notes').inputValue()).toBe(
        'Worked on Tuesday and on Friday',
      );
    },
  );

  browserTest(
    'can be changed, and simulated, without a network after one visit',
    wholeTask,
    async ({ visit, address }) => {
      const { page, context } = await visit();
      await page.goto(address);
      await waitUntilKept(page);
      await context.setOffline(true);
      await page.reload();
      await moveAway(page);
      await answersOnce(page, (all) => all.length === 9 && all.every(({ difference }) => difference !== undefined));
      await page.reload();
      await standsAt(page, after);
      await answersOnce(page, (all) => all.length === 9);
      await expectAccessible(page);
      await keepScreenshot(page, 'play-offline');
    },
  );
});

describe('two tabs with one playbook', () => {
  browserTest('show each other’s edits, and each undoes its own', wholeTask, async ({ visit, address }) => {
    const { page: one, context } = await visit();
    const two = await context.newPage();
    await one.goto(address);
    await one.bringToFront();
    await standsAt(one, before);
    await two.goto(address);
    await standsAt(two, before);

    await one.bringToFront();
    await moveAway(one);
    await standsAt(two, after);
    await two.bringToFront();
    const choose = async (page: Page, from: string, play: string) => {
      await page.getByRole('heading', { level: 1 }).getByRole('button', { name: from }).click();
      await page
        .getByRole('dialog', { name: 'Plays' })
        .getByRole('button', { name: new RegExp(`^${play}`) })
        .click();
      await page.getByRole('heading', { level: 1, name: play }).waitFor();
    };
    await choose(two, 'Lantern', 'Ferry');
    await two.getByRole('button', { name: 'More for this play' }).click();
    await two.getByRole('menuitem', { name: 'Name, tags and notes' }).click();
    const name = two.getByRole('dialog').getByLabel('What you call it');
    await name.fill('Lighthouse');
    await name.press('Enter');
    await two.keyboard.press('Escape');
    await two.getByRole('heading', { level: 1, name: 'Lighthouse' }).waitFor();

    await one.bringToFront();
    await undoButton(one).click();
    await standsAt(one, before);
    await choose(one, 'Lantern', 'Lighthouse');
    await choose(two, 'Lighthouse', 'Lantern');
    await standsAt(two, before);
    await choose(two, 'Lantern', 'Lighthouse');
    expect(await undoButton(one).isDisabled()).toBe(true);
    expect(await undoButton(two).isEnabled()).toBe(true);
    await expectAccessible(one);
    await keepScreenshot(one, 'two-tabs');
  });

  browserTest('say why Undo leaves what the other has changed since', wholeTask, async ({ visit, address }) => {
    const { page: one, context } = await visit();
    const two = await context.newPage();
    await one.goto(address);
    await one.bringToFront();
    await moveAway(one);
    await two.goto(address);
    await standsAt(two, after);
    await two.bringToFront();
    await fieldHand(two).dragMan('TR', 10, 12);
    const both = 'TR, 10 yards right, 12 above the goal line';
    await standsAt(two, both);

    await one.bringToFront();
    await standsAt(one, both);
    await undoButton(one).click();
    await one.getByText(/is not taken back: another tab has changed the same since/).waitFor();
    await standsAt(one, after);
    await standsAt(one, both);
    expect(await undoButton(one).isDisabled()).toBe(true);
    await expectAccessible(one);
    await keepScreenshot(one, 'two-tabs-overwritten');
    await one.getByRole('button', { name: 'Understood' }).click();
    await one.getByText(/is not taken back/).waitFor({ state: 'hidden' });
  });
});
