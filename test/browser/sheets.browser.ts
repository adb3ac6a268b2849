import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';

/** Milliseconds in which a play is tried against all schemes even on a busy machine. */
const patience = 120_000;

/** What is saved when a button is pressed: its name and what it holds. */
async function saved(page: Page, button: string) {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()]);
  const parts: Buffer[] = [];
  for await (const part of await file.createReadStream()) parts.push(part);
  return { name: file.suggestedFilename(), bytes: Buffer.concat(parts) };
}

browserTest(
  'a play is put on paper: seen, tried, saved as PDF, picture and SVG, and printed',
  async ({ page, address }) => {
    await page.goto(`${address}#/teach/sheets/lantern`);
    await page.getByRole('heading', { level: 1, name: 'Teach' }).waitFor();
    const sheet = page.getByRole('img', { name: 'Lantern: play sheet' });
    await sheet.waitFor();
    await sheet.getByText('Not played against any scheme yet.').waitFor();
    // It is tried by itself, and the page fills in.
    await sheet.getByText(/^Goals a man-up, simulated, \d+ against each scheme/).waitFor({ timeout: patience });
    expect(await sheet.getByText(/^.+: 0\.\d\d \(0\.\d\d to 0\.\d\d\)$/).count()).toBe(6);
    await expectAccessible(page);
    await keepScreenshot(page, 'sheets');

    const pdf = await saved(page, 'Save as PDF');
    expect(pdf.name).toBe('lantern-play-sheet.pdf');
    await page.getByText('Saved: lantern-play-sheet.pdf.').waitFor();
    const words = await wordsOfPdf(pdf.bytes);
    for (const part of ['Lantern', 'Reads, in this order', 'What it beats', 'TR passes to TL'])
      expect(words).toContain(part);
    const picture = await saved(page, 'Save as picture');
    expect(picture.bytes.subarray(1, 4).toString()).toBe('PNG');
    // Letter at 200 dots an inch: width and height stand in the file's first part (https://www.w3.org/TR/png-3/#11IHDR).
    expect([picture.bytes.readUInt32BE(16), picture.bytes.readUInt32BE(20)]).toEqual([1700, 2200]);
    const svg = (await saved(page, 'Save as SVG')).bytes.toString();
    expect(svg).toContain('@font-face');
    expect(svg).toContain('>Lantern</text>');

    expect(await printed(page)).toEqual([{ size: 'Letter', words: expect.stringContaining('Reads, in this order') }]);
  },
);

browserTest(
  'names go on paper by choice alone, and all that belongs to a playbook goes into one file',
  async ({ page, address }) => {
    await page.goto(`${address}#/teach/sheets/ferry`);
    const sheet = page.getByRole('img', { name: 'Ferry: play sheet' });
    await sheet.waitFor();
    await page.getByRole('button', { name: 'Stop trying' }).click();
    await page.getByText('Stopped. What is not tried yet is left out of the pages.').waitFor();
    const names = sheet.getByText(/^\d+ \p{L}{3,}/u);
    expect(await names.count()).toBe(0);
    await page.getByRole('checkbox', { name: 'Names beside the numbers' }).check();
    await expect.poll(() => names.count()).toBe(6);
    await page.getByRole('combobox', { name: 'Paper', exact: true }).selectOption('A4');
    await page.getByRole('combobox', { name: 'What goes on paper' }).selectOption('Whole playbook');
    await page.getByRole('img', { name: /man-up playbook$/ }).waitFor();
    const count = await page.getByRole('img', { name: /Lantern|Quarry|Ferry/ }).count();
    expect(count).toBeGreaterThan(15);
    await page.getByRole('combobox', { name: 'What goes on paper' }).selectOption('Cards for bench and wrist');
    await page.getByRole('img', { name: 'Call cards' }).waitFor();
    await page.getByRole('button', { name: 'Stop trying' }).click();
    // A bench card lies on its side: each page has the size that it was laid out for.
    expect((await printed(page)).map(({ size }) => size)).toEqual(['A4 on its side', 'A4']);
  },
);

browserTest('the page of an opponent says what to call, on a phone too', async ({ visit, address }) => {
  const { page } = await visit({ viewport: { width: 360, height: 740 } });
  await page.goto(`${address}#/teach/sheets/lantern`);
  await page.getByRole('combobox', { name: 'What goes on paper' }).selectOption('Page of an opponent');
  const sheet = page.getByRole('img', { name: 'Against Copper Falls' });
  await sheet.getByText('Seen today: tick one box a man-up.').waitFor();
  await sheet.getByText(/first(;|:) /).waitFor({ timeout: patience });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  await expectAccessible(page);
  // Pages are laid out by measured letters: with the workbench's even figures its 110 points were 118, and ran into the next column.
  const call = sheet.getByText('2 Quarry, 2-2-2-low');
  expect(await call.evaluate((text) => (text as unknown as SVGTextElement).getComputedTextLength())).toBeLessThan(111);
  await page.getByRole('button', { name: 'Show the page large' }).click();
  const large = page.getByRole('dialog').getByRole('img', { name: 'Against Copper Falls' });
  expect((await large.boundingBox())?.width).toBeGreaterThan(900);
  await expectAccessible(page);
  await page.keyboard.press('Escape');

  await saved(page, 'Save as SVG');
  await page.getByText('Saved: copper-falls').waitFor();
  await page.getByRole('combobox', { name: 'Opponent' }).selectOption('Northgate Ospreys');
  await page.getByRole('img', { name: 'Against Northgate Ospreys' }).waitFor();
  await page.getByText('Saved:').waitFor({ state: 'detached' });
  await page.goto(`${address}#/opponents`);
  await page.getByText('Northgate Ospreys').first().click();
  await page.getByRole('button', { name: 'One page to print' }).click();
  await page.getByRole('img', { name: 'Against Northgate Ospreys' }).waitFor();
});

async function wordsOfPdf(bytes: Uint8Array): Promise<string> {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
  const { items } = await (await pdf.getPage(1)).getTextContent();
  return items.map((item) => ('str' in item ? item.str : '')).join('');
}

/** Points of the papers. */
const sizes: Readonly<Record<string, string>> = {
  '612x792': 'Letter',
  '595x842': 'A4',
  '842x595': 'A4 on its side',
};

/** What the browser's own printing makes of the page: its papers and their words. */
async function printed(page: Page) {
  await page.evaluate(() => {
    // The print window of a browser without a screen shuts at once; here it stays until the paper was looked at.
    window.print = () => undefined;
  });
  await page.getByRole('button', { name: 'Print' }).click();
  await page.locator('.printed').waitFor({ state: 'attached' });
  const paper = await page.pdf({ preferCSSPageSize: true });
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await page.locator('.printed').waitFor({ state: 'detached' });
  const pdf = await getDocument({ data: new Uint8Array(paper), verbosity: 0 }).promise;
  return Promise.all(
    Array.from({ length: pdf.numPages }, async (_, at) => {
      const sheet = await pdf.getPage(at + 1);
      const { width, height } = sheet.getViewport({ scale: 1 });
      const { items } = await sheet.getTextContent();
      const size = `${Math.round(width)}x${Math.round(height)}`;
      return { size: sizes[size] ?? size, words: items.map((item) => ('str' in item ? item.str : '')).join('') };
    }),
  );
}
