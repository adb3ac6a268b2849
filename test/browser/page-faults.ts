import type { BrowserContext, Page } from 'playwright-core';

/** What went wrong in a context's pages without anybody having asked: each is a sentence with the page's own words. */
export interface PageFaults {
  readonly all: readonly string[];
  /** The test means these to happen: nothing that matches counts from here on, nor did before. */
  readonly expect: (pattern: RegExp) => void;
}

/** Collects console errors, uncaught exceptions, requests that fail and answers that are refusals, in every page and worker of a context. */
export function watchFaults(context: BrowserContext): PageFaults {
  const seen: string[] = [];
  const expected: RegExp[] = [];
  const watch = (page: Page) => {
    page.on('console', (message) => {
      if (message.type() === 'error') seen.push(`console error: ${message.text()} (${message.location().url})`);
    });
    page.on('pageerror', (error) => seen.push(`uncaught: ${error.stack ?? error.message}`));
    page.on('crash', () => seen.push('the page crashed'));
  };
  context.on('page', watch);
  context.on('requestfailed', (request) => {
    seen.push(`request failed: ${request.url()} (${request.failure()?.errorText})`);
  });
  context.on('response', (response) => {
    if (response.status() >= 400) seen.push(`request refused: ${response.url()} (${response.status()})`);
  });
  return {
    get all() {
      return seen.filter((fault) => !expected.some((pattern) => pattern.test(fault)));
    },
    expect: (pattern) => void expected.push(pattern),
  };
}
