// Draws the workbench as the README shows it, from the demo playbook in a real browser: npm run screens
import { type Browser, chromium, type Page } from 'playwright-core';
import { launchBrowser } from './launch-browser.ts';
import { startApp } from './start-app.ts';

/** One picture of the README: how large, in which look, and what is done before it is taken. */
interface Screen {
  readonly file: string;
  readonly width: number;
  readonly height: number;
  readonly look: 'paper' | 'dark';
  /** Its place, what stands after the # of the address, and what is on it when it is there. */
  readonly place: string;
  readonly ready: RegExp;
  readonly prepare: (page: Page) => Promise<void>;
}

/** Milliseconds in which nine schemes are answered even on a slow machine. */
const patience = 120_000;

/** Said once every scheme is answered. */
const played = /^It (is|looks) best against/;

const screens: readonly Screen[] = [
  {
    file: 'workbench.png',
    width: 1360,
    height: 900,
    look: 'paper',
    place: '/play/lantern',
    ready: played,
    prepare: async (page) => {
      await page.getByRole('button', { name: /^3 behind/ }).click();
      await playTo(page, 4);
    },
  },
  {
    file: 'workbench-dark.png',
    width: 1100,
    height: 800,
    look: 'dark',
    place: '/play/quarry',
    ready: played,
    prepare: async (page) => {
      await page.getByRole('button', { name: /^Diamond-and-one/ }).click();
      await page.getByRole('button', { name: 'Shot value' }).click();
      await playTo(page, 3);
    },
  },
  {
    file: 'workbench-phone.png',
    width: 390,
    height: 800,
    look: 'paper',
    place: '/play/lantern',
    ready: played,
    prepare: async (page) => {
      await page.getByRole('button', { name: /^2 down/ }).click();
    },
  },
  {
    file: 'teach.png',
    width: 900,
    height: 1000,
    look: 'paper',
    place: '/teach/sheets/ferry',
    ready: /^Goals a man-up, simulated/,
    prepare: async () => undefined,
  },
];

const app = await startApp();
const launched = await launchBrowser();
try {
  const browser = await chromium.connect(launched.endpoint);
  for (const screen of screens) await draw(browser, screen);
  await browser.close();
} finally {
  await launched.close();
  await app.close();
}

async function draw(browser: Browser, { file, width, height, look, place, ready, prepare }: Screen): Promise<void> {
  const context = await browser.newContext({ viewport: { width, height }, reducedMotion: 'reduce' });
  await context.addInitScript((name) => {
    localStorage.setItem('sliderule:look', name);
    localStorage.setItem('sliderule:first-minute', 'seen');
  }, look);
  const page = await context.newPage();
  await page.goto(`${app.address}#${place}`);
  await page.getByText(ready).first().waitFor({ timeout: patience });
  await prepare(page);
  await page.evaluate(() => window.scrollTo(0, 0));
  await page.screenshot({ path: `docs/img/${file}` });
  await context.close();
  console.log(`docs/img/${file}`);
}

/** Steps from event to event until this many have gone by. */
async function playTo(page: Page, events: number): Promise<void> {
  const next = page.getByRole('button', { name: 'On to the next event' });
  for (let event = 0; event < events; event++) await next.click();
}
