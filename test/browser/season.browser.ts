import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { seasonCsv, seasonLines, type TableLine } from './season-table.ts';

const goals = (of: readonly TableLine[]) => `${of.filter(({ result }) => result === 'goal').length} of ${of.length}`;

browserTest(
  'a season of 200 man-ups comes in from a table, is counted, filtered, written on, and put on paper',
  async ({ page, address }) => {
    await page.goto(`${address}#/season`);
    await page.getByRole('heading', { name: 'No man-up was written down yet' }).waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'season-empty');

    // A table with a bad line: nothing of it comes in.
    const file = page.getByLabel('A CSV file with man-ups');
    await file.setInputFiles({ name: 'bad.csv', mimeType: 'text/csv', buffer: seasonCsv(41) });
    await page.getByText(/^Line 43: result: "scored" is not one of goal/).waitFor();
    expect(await page.getByRole('button', { name: 'Take in 0 man-ups' }).isDisabled()).toBe(true);
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Close' }).click();

    await file.setInputFiles({ name: 'season.csv', mimeType: 'text/csv', buffer: seasonCsv() });
    await page.getByText('200 man-ups can be taken in.').waitFor();
    await page.getByRole('button', { name: 'Take in 200 man-ups' }).click();
    await page.getByText('200 man-ups taken in; Undo takes them out again.').waitFor();

    const ours = seasonLines.filter(({ side }) => side === 'ours');
    const panel = page.getByRole('region', { name: 'Our man-ups', exact: true });
    const lines = panel.getByRole('row');
    await lines.filter({ hasText: `all${goals(ours)}` }).waitFor();
    const lantern = ours.filter(({ call }) => call === 'Lantern');
    await lines
      .filter({ hasText: `Lantern${goals(lantern)}` })
      .filter({ hasText: 'surely more' })
      .waitFor();
    // The chart is drawn, and says in words what the table says in figures.
    await panel.locator('figure svg').first().waitFor();
    await panel.getByRole('img', { name: /^Lantern brings surely more goals than the others/ }).waitFor();
    await page.getByText(/the simulation expected \d+\.\d, and .* would be luck/).waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'season');
    await page.screenshot({ path: 'artifacts/screens/season-whole.png', fullPage: true });

    await page
      .getByRole('region', { name: 'Which man-ups' })
      .getByLabel('Opponent')
      .selectOption({ label: 'Northgate Ospreys' });
    const met = seasonLines.filter(({ opponent }) => opponent === 'Northgate Ospreys');
    await page.getByText(`Which man-ups: ${met.length} of 200`).waitFor();
    await lines.filter({ hasText: `all${goals(met.filter(({ side }) => side === 'ours'))}` }).waitFor();
    await page.getByLabel('Put together by').selectOption('scheme');
    await lines.filter({ hasText: 'Five-man rotation' }).waitFor();
    await page.getByRole('button', { name: 'Show all' }).click();
    await page.getByText('Which man-ups: 200 of 200').waitFor();

    await page.getByRole('radio', { name: 'The man-ups' }).check();
    const list = page.getByRole('region', { name: 'The man-ups as a table' });
    expect(await list.getByRole('row').count()).toBe(101);
    await keepScreenshot(page, 'season-list');
    await page.getByRole('button', { name: 'Show 100 more' }).click();
    expect(await list.getByRole('row').count()).toBe(201);
    await page.getByRole('radio', { name: 'On paper' }).check();
    await page
      .getByRole('img', { name: /^Man-ups of / })
      .first()
      .waitFor();
    await keepScreenshot(page, 'season-paper');
  },
);

browserTest(
  'a man-up is written down, changed and deleted; what it suggests is accepted and undone; the season is printed',
  async ({ page, address }) => {
    await page.goto(`${address}#/season`);
    await page.getByRole('button', { name: 'Write down the first' }).click();
    const form = page.getByRole('dialog');
    await form.getByRole('button', { name: 'Write it down' }).click();
    await form.getByText('It is empty. Say how the man-up ended.').waitFor();
    await expectAccessible(page);
    await form.getByLabel('Ended in').selectOption('goal');
    await form.getByLabel('Day').fill('2026-03-14');
    await form.getByLabel('Opponent').fill('copper falls');
    await form.getByLabel('Call').selectOption({ label: 'Lantern' });
    await form.getByLabel('They played').selectOption('jump');
    await form.getByRole('textbox', { name: /^Clock/ }).fill('7:61');
    await form.getByRole('button', { name: 'Write it down' }).click();
    await form.getByText('"7:61" is no time on the clock; write 7:11, or seconds.').waitFor();
    await form.getByRole('textbox', { name: /^Clock/ }).fill('7:11');
    await page.screenshot({ path: 'artifacts/screens/season-form.png' });
    await form.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('Written down.').waitFor();

    await page.getByRole('radio', { name: 'The man-ups' }).check();
    const list = page.getByRole('region', { name: 'The man-ups as a table' });
    const line = list.getByRole('row').nth(1);
    await line.filter({ hasText: '2026-03-14 7:11goaloursCopper FallsLanternJump' }).waitFor();
    await list.getByRole('button', { name: /^Change the man-up of 2026-03-14/ }).click();
    await form.getByLabel('Ended in').selectOption('saved');
    await form.getByRole('button', { name: 'Keep the change' }).click();
    await line.filter({ hasText: 'saved' }).waitFor();
    await expectAccessible(page);

    await page.getByRole('radio', { name: 'What it says' }).check();
    const proposals = page.getByRole('region', { name: 'What may be changed' });
    await proposals.getByText('Jump: 0 % becomes 20 %').waitFor();
    await proposals.getByRole('button', { name: 'Accept: Copper Falls' }).click();
    await page.getByText('Accepted: Copper Falls. Undo takes it back.').waitFor();
    await proposals.getByText('Nothing yet').waitFor();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await proposals.getByText('Jump: 0 % becomes 20 %').waitFor();

    await page.getByRole('radio', { name: 'On paper' }).check();
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await page.getByRole('button', { name: 'Print' }).click();
    const papers = page.locator('.printed-page');
    await papers.first().waitFor({ state: 'attached' });
    const words = (await papers.allTextContents()).join(' ').replace(/\s+/g, ' ');
    expect(words).toContain('We scored in 0 of 1 man-up');
    expect(words).toContain('no reliable data');
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));

    await page.setViewportSize({ width: 360, height: 740 });
    for (const view of ['On paper', 'The man-ups', 'What it says']) {
      await page.getByRole('radio', { name: view }).check();
      expect(await page.evaluate(() => document.documentElement.scrollWidth), view).toBeLessThanOrEqual(360);
      await expectAccessible(page);
    }
    await page.getByRole('radio', { name: 'The man-ups' }).check();
    await list.getByRole('button', { name: /^Change the man-up/ }).click();
    await form.getByRole('button', { name: 'Delete it' }).click();
    await page.getByRole('heading', { name: 'No man-up was written down yet' }).waitFor();
  },
);
