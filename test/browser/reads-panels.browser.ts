import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { demoPlaybook, serializePlaybook } from '../../src/playbook/index.ts';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

/** Milliseconds in which an answer comes even on a busy machine. */
const patience = 150_000;

/** Goals as they are written: ".31 (.26 to .36)". */
const goals = String.raw`\.\d\d \(\.\d\d to \.\d\d\)`;
/** A gain as it is written: "+.03 (.01 to .05)". */
const gain = String.raw`[+−]?\.\d\d \([+−]?\.\d\d to [+−]?\.\d\d\)`;

/** The demo, but that Lantern teaches X to feed C in any case, whoever is on him: to leave it to the play does better. */
const feedsBlindly = serializePlaybook({
  ...demoPlaybook,
  plays: demoPlaybook.plays.map((play) =>
    play.id === 'lantern' ? { ...play, reads: [{ carrier: 'X', if: [], then: 'feed C' }] } : play,
  ),
});

async function openFile(page: Page, address: string, text: string): Promise<void> {
  await page.goto(`${address}#/playbook`);
  await page.getByText('Everything is saved on this device.').waitFor();
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'behind.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.getByRole('button', { name: 'Open it in place of mine' }).click();
  await page.getByText('Everything is saved on this device.').waitFor();
}

/** Fails with what axe finds in any of the three looks; then the page looks as before. */
async function expectAccessibleInEveryLook(page: Page): Promise<void> {
  const wear = (look: string): Promise<void> =>
    page.evaluate((name) => {
      document.documentElement.dataset.look = name;
    }, look);
  for (const look of ['dark', 'sun', 'paper']) {
    await wear(look);
    await expectAccessible(page);
  }
}

/** Opens what stands behind a line, by the keyboard. */
async function openMore(page: Page, region: Locator, title: string): Promise<void> {
  await region.locator('summary').filter({ hasText: title }).focus();
  await page.keyboard.press('Enter');
}

browserTest(
  'a bad read is graded, and the better one is taught in its place and taken back',
  { timeout: 600_000 },
  async ({ page, address }) => {
    await openFile(page, address, feedsBlindly);
    await page.goto(`${address}#/reads/lantern`);
    await page.getByLabel('Man with the ball').selectOption('X');
    await page.getByLabel('Against').selectOption({ label: 'the mix of Copper Falls' });
    await page.getByRole('button', { name: 'Find the reads' }).click();
    const grades = page.getByRole('region', { name: 'The reads that are taught' });
    const read = grades.getByRole('listitem', { name: 'X feeds C in any case.' });
    await read.getByText(/: it costs \.\d\d \(/).waitFor({ timeout: patience });
    await read.getByRole('row', { name: new RegExp(`^this read ${goals}`) }).waitFor();
    await read.getByRole('row', { name: new RegExp(`^best for this cue: X .* ${goals}`) }).waitFor();
    // What a rough answer calls sure, a surer one may not: nothing is pressed before the last.
    await page.getByRole('button', { name: 'Find the reads' }).waitFor({ timeout: patience });

    const fakes = page.getByRole('region', { name: 'What a fake buys', exact: true });
    expect(await fakes.getByRole('row', { name: new RegExp(`^(TR|TL|WR|WL|C) ${gain}`) }).count()).toBe(5);
    await openMore(page, fakes, 'Against each scheme');
    const toC = fakes.getByRole('region', { name: 'A fake to C, against each scheme' });
    expect(await toC.locator('tbody').getByRole('row').count()).toBe(2);
    const known = page.getByRole('region', { name: 'One card, or one for each scheme' });
    await known.getByText(/^(A card for each scheme brings|One card for all schemes does as well)/).waitFor();
    await known.getByRole('row', { name: new RegExp(`^a card for each scheme ${goals} ${gain}`) }).waitFor();
    await expectAccessibleInEveryLook(page);
    await keepScreenshot(page, 'reads-panels');

    const card = page.getByRole('region', { name: 'The card', exact: true });
    await card.getByRole('radio', { name: '1', exact: true }).check();
    await card.getByText(/^Writes .* into the play in place of the one that it teaches him now, as one step/).waitFor();
    await card.getByRole('button', { name: 'Teach these reads' }).click();
    await card.getByText('The play teaches X this card. Undo takes it back.').waitFor();
    await read.getByText('The play does not teach this read any more.').waitFor();
    await page.getByRole('button', { name: /^Undo: teach X \d reads?/ }).click();
    await card.getByRole('button', { name: 'Teach these reads' }).waitFor();

    await read.getByRole('button', { name: 'Teach this instead' }).click();
    await read.getByText('The play teaches the better one in its place now. Undo takes it back.').waitFor();
    expect(await read.getByRole('button', { name: 'Teach this instead' }).count()).toBe(0);
    await grades.getByText('A read came into the play after this was found.').waitFor();
    await page.getByRole('button', { name: 'Undo: teach X a better read' }).click();
    await read.getByRole('button', { name: 'Teach this instead' }).waitFor();

    await read.getByRole('button', { name: 'Take this read out' }).click();
    await read.getByText('The play does not teach this read any more. Undo takes it back.').waitFor();
    expect(await read.getByRole('button').count()).toBe(0);
    await page.getByRole('button', { name: 'Undo: take a read of X out' }).click();
    await read.getByRole('button', { name: 'Take this read out' }).waitFor();
  },
);

browserTest(
  'when a man without the ball should go is found, stopped, and told to be of another run',
  { timeout: 600_000 },
  async ({ page, address }) => {
    await page.goto(`${address}#/reads/ferry`);
    const runs = page.getByRole('region', { name: 'Without the ball: when to go' });
    await runs.getByLabel('Run').selectOption({ label: 'P cuts, step "go"' });
    await runs.getByRole('button', { name: 'Find when he goes' }).click();
    await runs.getByRole('progressbar', { name: 'How far the search for when he goes is' }).waitFor();
    await runs.getByText('A first, rough answer.').waitFor({ timeout: patience });
    await runs.getByRole('button', { name: 'Stop finding when he goes' }).click();
    await runs.getByText('Stopped. What was found until then stays').waitFor();

    await runs.getByRole('radio', { name: '0', exact: true }).check();
    await runs.getByText(/^P cuts .*, whatever he sees\.$/).waitFor();
    await runs.getByText(/^The play calls for this run in \d+ % of man-ups\. /).waitFor();
    await openMore(page, runs, 'Every moment in figures');
    const moment = runs.getByRole('row', {
      name: new RegExp(`^(at once|\\d\\.\\d s after the call) ${goals} ${gain}$`),
    });
    await expect.poll(() => moment.count()).toBe(21);
    await openMore(page, runs, 'Every card, and against each scheme');
    await runs.getByRole('row', { name: new RegExp(`^the best time: .* \\(the card above\\) ${goals}`) }).waitFor();
    await expectAccessibleInEveryLook(page);
    await keepScreenshot(page, 'runs-panel');

    await runs.getByLabel('Run').selectOption({ label: 'P cuts, step "across"' });
    await runs.getByText('This was found for another run or other schemes').waitFor();
  },
);

browserTest(
  'on a phone what the place tells beside the card is folded behind its headings',
  async ({ page, address }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(`${address}#/reads/ferry`);
    const runs = page.getByRole('region', { name: 'Without the ball: when to go' });
    await runs.getByRole('heading', { level: 2, name: 'Without the ball: when to go' }).waitFor();
    await runs.getByText('Not found yet.').waitFor();
    const find = runs.getByRole('button', { name: 'Find when he goes' });
    expect(await find.isVisible()).toBe(false);
    await page.getByRole('heading', { level: 2, name: 'What practice is worth' }).waitFor();
    await expectAccessible(page);
    await openMore(page, runs, 'Without the ball: when to go');
    await find.waitFor();
    await expectAccessibleInEveryLook(page);

    await page.setViewportSize({ width: 1280, height: 800 });
    await find.waitFor();
    expect(await runs.locator('summary').count()).toBe(0);
  },
);
