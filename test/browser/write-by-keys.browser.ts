import type { Locator } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { fieldHand } from './field-hand.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { pickWithKeys, pressOn, tabTo } from './keys.ts';
import { answersOnce, savedPlay, seenOnce, step, wholeTask } from './play-place.ts';

browserTest('a play is written, played and stepped through without a pointer', wholeTask, async ({ page }) => {
  const type = (text: string) => page.keyboard.type(text);
  const press = async (key: string, times = 1) => {
    for (let time = 0; time < times; time++) await page.keyboard.press(key);
  };
  await pressOn(page, page.getByRole('link', { name: 'Playbook' }), 'Enter');
  await tabTo(page, page.getByLabel('Team'));
  await type('Elmwood');
  await press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Elmwood' }).waitFor();
  await pressOn(page, page.getByRole('link', { name: 'Play', exact: true }), 'Enter');

  await pressOn(page, page.getByRole('button', { name: 'New play' }), 'Enter');
  const window = page.getByRole('dialog', { name: 'New play' });
  await tabTo(page, window.getByLabel('What you call it'));
  await type('Harbor');
  await tabTo(page, window.getByRole('radio', { checked: true }));
  const set = window.getByRole('radio', { name: /^2-2-2 low/ });
  for (let presses = 0; presses < 12 && !(await set.isChecked()); presses++) await press('ArrowDown');
  expect(await set.isChecked()).toBe(true);
  await press('Enter');
  await window.waitFor({ state: 'hidden' });

  // The set: arrow keys move a man by half a yard, with Shift by a tenth.
  const field = fieldHand(page);
  await pressOn(page, step(page, 'set'), 'Enter');
  await tabTo(page, field.man('TR'));
  await press('ArrowRight', 3);
  await press('Shift+ArrowUp', 2);
  await page.getByRole('button', { name: 'Undo: move TR' }).waitFor();
  expect(await field.man('TR').evaluate((man) => man === document.activeElement)).toBe(true);

  // The first step, in words.
  await pressOn(page, step(page, 'step-1'), 'Enter');
  const tell = page.getByRole('form', { name: 'Tell a man something' });
  await pickWithKeys(page, tell.getByRole('combobox', { name: 'Who', exact: true }), 'TR');
  await pickWithKeys(page, tell.getByRole('combobox', { name: 'Does', exact: true }), 'pass');
  await pickWithKeys(page, tell.getByRole('combobox', { name: 'Whom', exact: true }), 'TL');
  await pressOn(page, tell.getByRole('button', { name: 'Add' }), 'Enter');
  await page.getByText('TR passes to TL', { exact: true }).waitFor();
  await pickWithKeys(page, tell.getByRole('combobox', { name: 'Who', exact: true }), 'CR');
  await pickWithKeys(page, tell.getByRole('combobox', { name: 'Does', exact: true }), 'cut');
  await tabTo(page, tell.getByLabel('Where: x, y in yards'));
  await type('5, 4');
  await press('Enter');
  await page.getByRole('button', { name: 'Undo: tell CR to cut' }).waitFor();

  // A man on the field is chosen and told by the verbs below it; the man whom it is for is chosen on the field too.
  await pressOn(page, field.man('CL'), 'Enter');
  await pressOn(page, page.getByRole('group', { name: 'Tell CL to' }).getByRole('button', { name: 'seal' }), 'Enter');
  await pressOn(page, field.man('WL'), 'Enter');
  await page.getByRole('button', { name: 'Undo: tell CL to seal' }).waitFor();

  // A place is aimed at with the arrow keys, from the man on; a pick takes its place and then its man. Escape gives up.
  await pressOn(page, field.man('WR'), 'Enter');
  const tellWing = page.getByRole('group', { name: 'Tell WR to' });
  await pressOn(page, tellWing.getByRole('button', { name: 'pop' }), 'Enter');
  const mark = field.plane.getByRole('button', { name: /^Where WR goes: pop, / });
  const hasFocus = (of: Locator) => of.evaluate((element) => element === document.activeElement);
  expect(await hasFocus(mark)).toBe(true);
  await press('ArrowLeft', 2);
  await page.getByText(/^WR pop: .* goes 1 yd.*Enter takes this place/).waitFor();
  await expectAccessible(page);
  await keepScreenshot(page, 'aim-by-keys');
  await press('Escape');
  await mark.waitFor({ state: 'detached' });
  expect(await hasFocus(field.man('WR'))).toBe(true);
  await pressOn(page, tellWing.getByRole('button', { name: 'pick' }), 'Enter');
  await press('ArrowLeft', 4);
  await press('Shift+ArrowDown', 3);
  await press('Enter');
  expect(await hasFocus(field.man('WR'))).toBe(true);
  await pressOn(page, field.man('TR'), 'Enter');
  await page.getByRole('button', { name: 'Undo: tell WR to pick' }).waitFor();

  // The second step waits for a call, and then he shoots.
  await pressOn(page, page.getByRole('button', { name: 'Step', exact: true }), 'Enter');
  await page.getByRole('region', { name: 'Step step-2' }).waitFor();
  const starts = page.getByRole('group', { name: 'Starts when' });
  await pickWithKeys(page, starts.getByLabel('Starts when'), 'call');
  await tabTo(page, starts.getByLabel('Seconds after it'));
  await press('ArrowUp', 14);
  await pickWithKeys(page, tell.getByRole('combobox', { name: 'Who', exact: true }), 'TL');
  await pickWithKeys(page, tell.getByRole('combobox', { name: 'Does', exact: true }), 'shoot');
  await pressOn(page, tell.getByRole('button', { name: 'Add' }), 'Enter');
  await page.getByRole('button', { name: 'Undo: tell TL to shoot' }).waitFor();
  await expectAccessible(page);

  // Played, stopped, and looked through event by event.
  await answersOnce(page, (all) => all.length === 9);
  const playing = page.getByRole('group', { name: 'Playing' });
  const now = () => playing.getByLabel('Time in the play').inputValue().then(Number);
  await pressOn(page, playing.getByRole('button', { name: 'Play' }), 'Enter');
  await playing.getByRole('button', { name: 'Pause' }).waitFor();
  await press('Enter');
  await playing.getByRole('button', { name: 'Play' }).waitFor();
  await tabTo(page, playing.getByLabel('Time in the play'));
  await press('Home');
  const start = await now();
  const next = playing.getByRole('button', { name: 'On to the next event' });
  await pressOn(page, next, 'Enter');
  const first = await seenOnce(page, now, (time) => time > start);
  await press('Enter');
  const second = await seenOnce(page, now, (time) => time > first);
  await pressOn(page, playing.getByRole('button', { name: 'Back to the event before' }), 'Enter');
  expect(await seenOnce(page, now, (time) => time < second)).toBe(first);

  // A scheme is chosen and becomes the large one.
  const card = page
    .getByRole('region', { name: 'Against the schemes' })
    .getByRole('button', { name: /goals a chance/ });
  await pressOn(page, card.nth(1), 'Enter');
  await seenOnce(
    page,
    () => card.nth(1).getAttribute('aria-pressed'),
    (pressed) => pressed === 'true',
  );
  await page.getByRole('region', { name: /^What comes open against/ }).waitFor();
  // What is scrolled half under the masthead counts as too small to tap.
  await page.evaluate(() => document.documentElement.scrollTo(0, 0));
  await expectAccessible(page);
  await keepScreenshot(page, 'play-by-keys');

  expect(await savedPlay(page, 'Harbor')).toMatchObject({
    set: '2-2-2-low',
    spots: { TR: [8.5, 13.8] },
    beats: [
      { id: 'step-1', on: 'start', do: ['TR pass TL', 'CR cut to 5,4', 'CL seal on WL', 'WR pick at 7,1.3 on TR'] },
      { id: 'step-2', on: 'call step-1 + 2.4', do: ['TL shoot'] },
    ],
  });
});
