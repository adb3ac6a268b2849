// Drives the built workbench in a real browser, prints what it measured and writes it into docs/bench.md:
// npm run bench:app -- --minutes 10 --drags 20
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { arch, cpus } from 'node:os';
import { parseArgs } from 'node:util';
import { type Browser, chromium, type Page } from 'playwright-core';
import { measureFirstLoad } from '../../test/browser/first-load.ts';
import { launchBrowser } from '../../test/browser/launch-browser.ts';
import { startApp } from '../../test/browser/start-app.ts';
import { replacePart } from '../page-section.ts';
import { type AppResult, appSection } from './app-section.ts';
import { measureEdits } from './measure-edits.ts';
import { measureFilms } from './measure-films.ts';
import { measureManyPlays } from './measure-many-plays.ts';
import { measureMemory } from './measure-memory.ts';
import { measureOpening } from './measure-opening.ts';
import { measurePlayback } from './measure-playback.ts';
import { measureSharedLuck } from './measure-shared-luck.ts';
import { keepRecords, waitForRecord } from './page-record.ts';

const pagePath = 'docs/bench.md';
const { values } = parseArgs({
  options: {
    minutes: { type: 'string', default: '10' },
    drags: { type: 'string', default: '20' },
    visits: { type: 'string', default: '5' },
    seconds: { type: 'string', default: '15' },
    plays: { type: 'string', default: '200' },
  },
});
/** Milliseconds in which the first answers become narrow even on a slow machine. */
const patience = 60_000;
const manyPlaysDrags = 20;

const app = await startApp();
const launched = await launchBrowser();
try {
  const browser = await chromium.connect(launched.endpoint);
  const section = appSection(await measure(browser));
  await browser.close();
  console.log(section);
  writeFileSync(pagePath, replacePart(existsSync(pagePath) ? readFileSync(pagePath, 'utf8') : '', 'app', section));
} finally {
  await launched.close();
  await app.close();
}

async function measure(browser: Browser): Promise<AppResult> {
  const first = await browser.newContext();
  const programs = await measureFirstLoad(await first.newPage(), app.address);
  await first.close();
  const openings = await measureOpening(browser, app.address, Number(values.visits));

  const { page, close } = await openSettled(browser);
  const edits = await measureEdits(page, Number(values.drags));
  const playback = await measurePlayback(page, Number(values.seconds));
  await close();
  const films = await measureFilms(browser, app.address);
  const plays = Number(values.plays);
  const manyPlays = { plays, edits: await measureManyPlays(browser, app.address, plays, manyPlaysDrags) };
  const sharedLuck = [1, 3].map(measureSharedLuck);
  // Last, because it takes by far the longest and minds other work on the machine the least.
  const looped = await openSettled(browser);
  const heap_byMinute = await measureMemory(looped.page, Number(values.minutes));
  await looped.close();
  const conditions = conditionsWords(browser.version());
  return { conditions, programs, openings, edits, manyPlays, playback, heap_byMinute, sharedLuck, films };
}

/** A page of its own, once the first answers are narrow. */
async function openSettled(browser: Browser): Promise<{ readonly page: Page; readonly close: () => Promise<void> }> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  await keepRecords(context);
  const page = await context.newPage();
  await page.goto(app.address);
  await page.keyboard.press('Escape');
  await waitForRecord(page, ({ measures }) => measures.find(({ name }) => name === 'sliderule:within-0.03'), patience);
  return { page, close: () => context.close() };
}

/** The machine in general words: nothing that would tell one from its like. */
function conditionsWords(version: string): string {
  const family = cpus()[0]?.model.replace(/\s+/g, ' ').trim() || 'unknown CPU';
  return `Machine: ${cpus().length} cores of ${family} (${arch()}), drawing without a graphics card, Chromium ${version.split('.')[0]}.`;
}
