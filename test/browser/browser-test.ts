import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { test as base, expect, inject } from 'vitest';
import { type PageFaults, watchFaults } from './page-faults.ts';

/** Milliseconds that a click or a wish waits for what it needs, on a busy machine too; below the test's own bound, so that the wish is named. */
const patience = 30_000;

/**
 * A device that asks for less motion: the play stands still until somebody starts it, so that a picture of the page is the same each time, and
 * the machine has time for the test. A test of motion asks for `{ reducedMotion: 'no-preference' }`.
 */
const still: BrowserContextOptions = { reducedMotion: 'reduce' };

/** A browser as a coach has it: nothing kept in it from before, and closed after the test. */
export interface Visitor {
  readonly context: BrowserContext;
  /** The first tab, not yet at any address. `context.newPage()` opens another. */
  readonly page: Page;
  readonly faults: PageFaults;
}

export interface VisitOptions extends BrowserContextOptions {
  /** Whether the guided first minute is offered, as it is to who has never been here; it is not when left out, because its card lies over the page. */
  readonly firstMinute?: boolean;
}

interface BrowserFixtures {
  readonly browser: Browser;
  /** A new coach's browser; by default one of 1280 by 800 that asks for less motion. Several in one test are several machines. */
  readonly visit: (options?: VisitOptions) => Promise<Visitor>;
  /** Where the workbench is, with a slash at the end. */
  readonly address: string;
  /** The workbench opened in a new coach's browser. */
  readonly page: Page;
}

/**
 * A test in a real browser against the real build and server. A console error, an uncaught exception or a failed request in any page or
 * worker fails the test, unless it said before that it means it: `faults.expect(/.../)`.
 */
export const browserTest = base.extend<BrowserFixtures>({
  // biome-ignore lint/correctness/noEmptyPattern: vitest reads from this pattern which fixtures are wanted
  browser: async ({}, use) => {
    const browser = await chromium.connect(inject('browserEndpoint'));
    await use(browser);
    await browser.close();
  },
  // biome-ignore lint/correctness/noEmptyPattern: as above
  address: async ({}, use) => use(inject('appAddress')),
  visit: async ({ browser }, use) => {
    const visitors: Visitor[] = [];
    await use(async ({ firstMinute = false, ...options } = {}) => {
      const context = await browser.newContext({ ...still, viewport: { width: 1280, height: 800 }, ...options });
      await context.addInitScript(leaveOneCore);
      if (!firstMinute) await context.addInitScript(skipFirstMinute);
      context.setDefaultTimeout(patience);
      const faults = watchFaults(context);
      const visitor = { context, faults, page: await context.newPage() };
      visitors.push(visitor);
      return visitor;
    });
    const faults = visitors.flatMap((visitor) => visitor.faults.all);
    for (const { context } of visitors) await context.close();
    expect(faults).toEqual([]);
  },
  page: async ({ visit, address }, use) => {
    const { page } = await visit();
    await page.goto(address);
    await use(page);
  },
});

/** One thread for the simulation: on two cores the page and whoever drives it need the other. The answers are the same for any number. */
function leaveOneCore(): void {
  Object.defineProperty(navigator, 'hardwareConcurrency', { value: 1 });
}

/** Runs in every page before its own scripts; one that has no address yet has no storage either. */
function skipFirstMinute(): void {
  if (location.protocol === 'http:') localStorage.setItem('sliderule:first-minute', 'seen');
}
