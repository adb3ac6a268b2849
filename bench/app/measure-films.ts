import type { Browser, Page } from 'playwright-core';

/** A film that was made in the workbench. */
export interface MadeFilm {
  /** As what, in words. */
  readonly name: string;
  /** How long it is, s. */
  readonly length: number;
  readonly bytes: number;
  /** From the press of the button to the file. */
  readonly seconds: number;
}

/** Milliseconds after which a film is given up. */
const patience = 300_000;

/** Makes the demo's first play into films, each as a coach does. */
export async function measureFilms(browser: Browser, address: string): Promise<readonly MadeFilm[]> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, reducedMotion: 'reduce' });
  const page = await context.newPage();
  page.setDefaultTimeout(patience);
  await page.goto(`${address}#/teach/clip/lantern`);
  await page.keyboard.press('Escape');
  const films = [await madeFilm(page, 'Video', 'MP4, 1280 by 720'), await madeFilm(page, 'GIF', 'GIF, 640 by 800')];
  await context.close();
  return films;
}

async function madeFilm(page: Page, format: 'Video' | 'GIF', name: string): Promise<MadeFilm> {
  await page.getByRole('radio', { name: format }).check();
  await page.getByRole('img', { name: /^Lantern against Box-and-one zone, as it is shown/ }).waitFor();
  const length = Number(await page.getByLabel('Moment of the film').getAttribute('max'));
  const save = page.getByRole('button', { name: 'Save', exact: true });
  const start = performance.now();
  await page.getByRole('button', { name: `Make the ${format === 'GIF' ? format : 'video'}` }).click();
  await save.waitFor();
  const seconds = (performance.now() - start) / 1000;
  const [file] = await Promise.all([page.waitForEvent('download'), save.click()]);
  let bytes = 0;
  for await (const part of await file.createReadStream()) bytes += (part as Buffer).length;
  return { name, length, bytes, seconds };
}
