import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { seasonCsv, seasonLines, type TableLine } from './season-table.ts';

const goals = (of: readonly TableLine[]) => `${of.filter(({ result }) => result === 'goal').length} of ${of.length}`;

browserTest(
  'a season of 200 chances comes in from a table, is counted, filtered, written on, and put on paper',
  async ({ page, address }) => {
    await page.goto(`${address}#/season`);
    await page.getByRole('heading', { name: 'No chance was written down yet' }).waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'season-empty');

    // A table with a bad line: it is told, and the others are offered without it.
    const file = page.getByLabel('A CSV file with chances');
    await file.setInputFiles({ name: 'bad.csv', mimeType: 'text/csv', buffer: seasonCsv(41) });
    await page.getByText(/^Line 43: result: "scored" is not one of goal/).waitFor();
    await page.getByText(/^Of 200 lines 1 cannot be read\./).waitFor();
    await page
      .getByRole('list', { name: 'What may be a slip' })
      .getByText(/^opponent: \d+ lines name one/)
      .waitFor();
    expect(await page.getByRole('button', { name: 'Take the 199 good lines alone' }).isEnabled()).toBe(true);
    await page.getByText('What may stand in each column').click();
    await page
      .getByRole('row', { name: /^result or outcome/ })
      .getByText('penalty ran out')
      .waitFor();
    await keepScreenshot(page, 'season-import');
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Close' }).click();

    // Days that may be two are asked about once.
    await page.getByRole('button', { name: 'Paste a table' }).first().click();
    await page.getByRole('textbox').fill('result,date\ngoal,3/4/2026\nsaved,5/6/2026');
    await page.getByText(/^Of 2 lines 2 cannot be read/).waitFor();
    await page.getByText('3/4/2026 is March 4').click();
    await page.getByText('2 chances can be taken in.').waitFor();
    await expectAccessible(page);
    await page.getByRole('button', { name: 'Close' }).click();

    await file.setInputFiles({ name: 'season.csv', mimeType: 'text/csv', buffer: seasonCsv() });
    await page.getByText('200 chances can be taken in.').waitFor();
    await page.getByRole('button', { name: 'Take in 200 chances' }).click();
    await page.getByText('200 chances taken in. Undo takes them out again.').waitFor();

    const ours = seasonLines.filter(({ side }) => side === 'ours');
    const panel = page.getByRole('region', { name: 'Our chances', exact: true });
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
    const pair = panel.getByRole('region', { name: 'Two of our chances by call, compared' });
    await pair.getByLabel('Compare').selectOption({ label: 'Quarry' });
    await pair.getByLabel('with').selectOption({ label: 'Ferry' });
    await pair.getByText(/which brings more goals cannot be told\..* 3 pairs were possible\./).waitFor();
    await page.getByText(/the simulation expected \d+\.\d, and .* would be luck/).waitFor();
    await expectAccessible(page);
    await keepScreenshot(page, 'season');
    await page.screenshot({ path: 'artifacts/screens/season-whole.png', fullPage: true });

    await page
      .getByRole('region', { name: 'Which chances' })
      .getByLabel('Opponent')
      .selectOption({ label: 'Northgate Ospreys' });
    const met = seasonLines.filter(({ opponent }) => opponent === 'Northgate Ospreys');
    await page.getByText(`Which chances: ${met.length} of 200`).waitFor();
    await lines.filter({ hasText: `all${goals(met.filter(({ side }) => side === 'ours'))}` }).waitFor();
    await page.getByLabel('Put together by').selectOption('scheme');
    await lines.filter({ hasText: 'Five-man rotation' }).waitFor();
    await page.getByRole('button', { name: 'Show all' }).click();
    await page.getByText('Which chances: 200 of 200').waitFor();

    await page.getByRole('radio', { name: 'The chances' }).check();
    const list = page.getByRole('region', { name: 'The chances as a table' });
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
  'a chance is written down, changed and deleted; what it suggests is accepted and undone; the season is printed',
  async ({ page, address }) => {
    await page.goto(`${address}#/season`);
    await page.getByRole('button', { name: 'Write down the first' }).click();
    const form = page.getByRole('dialog');
    await form.getByRole('button', { name: 'Write it down' }).click();
    await form.getByText('It is empty. Say how the chance ended.').waitFor();
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

    await page.getByRole('radio', { name: 'The chances' }).check();
    const list = page.getByRole('region', { name: 'The chances as a table' });
    const line = list.getByRole('row').nth(1);
    await line.filter({ hasText: '2026-03-14 7:11goaloursCopper FallsLanternJump' }).waitFor();
    await list.getByRole('button', { name: /^Change the chance of 2026-03-14/ }).click();
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
    // What was undone is not said to be accepted any more.
    expect(await page.getByText('Accepted: Copper Falls').count()).toBe(0);

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
    for (const view of ['On paper', 'The chances', 'What it says']) {
      await page.getByRole('radio', { name: view }).check();
      expect(await page.evaluate(() => document.documentElement.scrollWidth), view).toBeLessThanOrEqual(360);
      await expectAccessible(page);
    }
    await page.getByRole('radio', { name: 'The chances' }).check();
    const cards = page.getByRole('list', { name: 'The chances as a list' });
    await cards.getByText('they played Jump').waitFor();
    await keepScreenshot(page, 'season-cards');
    await cards.getByRole('button', { name: /^Change the chance/ }).click();
    await form.getByRole('button', { name: 'Delete it' }).click();
    await page.getByRole('heading', { name: 'No chance was written down yet' }).waitFor();
  },
);
