import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

/** Milliseconds in which the first answer comes even on a busy machine. */
const patience = 90_000;

browserTest(
  'what the starter of a play should look for is found, taught, and taken back',
  async ({ page, address }) => {
    await page.goto(`${address}#/reads/ferry`);
    await page.getByRole('heading', { level: 1, name: 'Reads' }).waitFor();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Find the reads' }).click();
    await page.getByRole('progressbar', { name: 'How far the search is' }).waitFor();
    const card = page.getByRole('region', { name: 'The card', exact: true });
    await card.getByText('A first, rough answer.').waitFor({ timeout: patience });
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByText('Stopped. What was found until then stays').waitFor();

    await card.getByRole('radio', { name: '1', exact: true }).check();
    const list = card.getByRole('listitem');
    expect(await list.count()).toBe(1);
    expect(await list.textContent()).toMatch(/^If .*, P .*\.$/);
    await card.getByText(/^[+−]?\.\d\d \(.* to .*\) goals a chance against leaving it to the play/).waitFor();
    const ways = page.getByRole('region', { name: 'What each way to decide is worth' });
    await ways.getByRole('row', { name: /^a card of 1 read \(the card above\) \.\d\d \(/ }).waitFor();
    const against = page.getByRole('region', { name: 'What the card gains against each scheme' });
    expect(await against.locator('tbody').getByRole('row').count()).toBeGreaterThan(5);
    await expectAccessible(page);
    await keepScreenshot(page, 'reads');

    await card.getByRole('button', { name: 'Teach these reads' }).click();
    await card.getByText('The play teaches P this card. Undo takes it back.').waitFor();
    expect(await card.getByRole('button', { name: 'Teach these reads' }).count()).toBe(0);
    await page.getByRole('button', { name: /^Undo: teach P \d reads?/ }).click();
    await card.getByRole('button', { name: 'Teach these reads' }).waitFor();
  },
);
