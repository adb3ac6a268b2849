import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { fieldHand } from './field-hand.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { answersOnce, savedPlaybook, seenOnce, step, wholeTask } from './play-place.ts';
import { fingersOn, tapWhenStill } from './touch.ts';

browserTest('a play is written with a finger on a phone', wholeTask, async ({ visit, address }) => {
  const { page } = await visit({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true });
  await page.goto(address);
  const field = fieldHand(page);
  const fingers = await fingersOn(page);
  const { plays } = await savedPlaybook(page);
  await answersOnce(page, (all) => all.length === 9);

  await step(page, 'set').tap();
  const [from, to] = [await field.manAt('TL'), await field.at(-10, 12)];
  const scrolled = await page.evaluate(() => window.scrollY);
  await fingers.drag(from, to);
  await page.getByRole('button', { name: 'TL, 10 yards left, 12 above the goal line' }).waitFor();
  // The finger drew and did not push the page.
  expect(await page.evaluate(() => window.scrollY)).toBe(scrolled);

  await tapWhenStill(page.getByRole('heading', { level: 1 }).getByRole('button'));
  await page.getByRole('dialog', { name: 'Plays' }).getByRole('button', { name: 'New play' }).tap();
  const window_ = page.getByRole('dialog', { name: 'New play' });
  await window_.getByLabel('What you call it').fill('Harbor');
  await window_.getByRole('radio', { name: /^2-2-2 low/ }).tap();
  await expectAccessible(page);
  await keepScreenshot(page, 'new-play');
  await window_.getByRole('button', { name: 'Make the play' }).tap();
  await window_.waitFor({ state: 'hidden' });
  await page.getByRole('heading', { level: 1, name: 'Harbor' }).waitFor();
  await fingers.drag(await field.manAt('TR'), await field.manAt('TL'));
  await page.getByText('TR passes to TL', { exact: true }).waitFor();
  await expectAccessible(page);
  await keepScreenshot(page, 'play-by-touch');

  await page.getByRole('button', { name: '9 schemes' }).tap();
  const picker = page.getByRole('dialog', { name: 'Run against' });
  const boxes = picker.getByRole('group', { name: 'A man down' }).getByRole('checkbox');
  await boxes.first().waitFor();
  const names = await boxes.evaluateAll((all) => all.map((box) => box.closest('label')?.textContent ?? ''));
  expect(names).toHaveLength(9);
  await boxes.first().tap();
  await expectAccessible(page);
  await keepScreenshot(page, 'scheme-picker');
  await picker.getByRole('button', { name: 'Close' }).tap();
  const asked = await answersOnce(page, (all) => all.length === 8);
  expect(asked.map(({ name }) => name)).toEqual(names.slice(1));
  const card = page
    .getByRole('region', { name: 'Against the schemes' })
    .getByRole('button', { name: /goals a chance/ });
  await card.last().tap();
  await seenOnce(
    page,
    () => card.last().getAttribute('aria-pressed'),
    (pressed) => pressed === 'true',
  );

  const written = await savedPlaybook(page);
  expect(written.plays[0]).toMatchObject({ id: plays[0]!.id, spots: { TL: [-10, 12] } });
  expect(written.plays.find(({ name }) => name === 'Harbor')?.beats).toEqual([
    { id: 'step-1', on: 'start', do: ['TR pass TL'] },
  ]);
});

browserTest('what is asked for below the field comes into sight on a phone', wholeTask, async ({ visit, address }) => {
  const { page } = await visit({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  await page.goto(address);
  await answersOnce(page, (all) => all.length === 9);
  const stage = page.getByRole('region', { name: 'The field' });
  const stageTop = () => stage.evaluate((one) => Math.round(one.getBoundingClientRect().top));
  const isOnTop = (top: number) => top >= 0 && top < 100;

  // What a verb waits for is given up by its own button.
  await step(page, /down/).tap();
  await page.getByRole('button', { name: /^TR,/ }).tap();
  const pop = page.getByRole('group', { name: 'Tell TR to' }).getByRole('button', { name: 'pop' });
  await pop.tap();
  await page.getByText('Tap pop again to give it up.').waitFor();
  await pop.tap();
  await page.getByText('Tap pop again to give it up.').waitFor({ state: 'hidden' });

  // The steps are not behind the line at the foot.
  const steps = await page.getByRole('group', { name: 'Steps of the play' }).boundingBox();
  const covers = await page.evaluate(
    ([x, y]) => document.elementFromPoint(x!, y!)?.closest('[aria-label="Steps of the play"]') === null,
    [steps!.x + 40, steps!.y + steps!.height - 4],
  );
  expect(covers).toBe(false);

  const card = page
    .getByRole('region', { name: 'Against the schemes' })
    .getByRole('button', { name: /goals a chance.*first look/ })
    .first();
  await card.tap();
  await seenOnce(page, stageTop, isOnTop);
  expect(await card.evaluate((one) => one === document.activeElement)).toBe(true);

  const shows = page.getByRole('button', { name: /^Show me one: / }).first();
  await shows.tap();
  await seenOnce(page, stageTop, isOnTop);

  const teach = page.getByRole('button', { name: /^Teach it as a read: / }).first();
  const name = await teach.getAttribute('aria-label');
  await teach.tap();
  await page
    .getByText(/^taught: \w+\u2019s read \d+; Undo takes it back$/)
    .first()
    .waitFor();
  await seenOnce(
    page,
    () => page.getByRole('button', { name: name!, exact: true }).count(),
    (offered) => offered === 0,
  );
  await expectAccessible(page);
});
