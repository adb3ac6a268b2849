import type { Page } from 'playwright-core';

/** Milliseconds in which a browser on a busy machine has kept every file of the workbench. */
const patience = 60_000;

/** Waits until the workbench opens without a network. Throws an Error when the browser does not come to it. */
export async function waitUntilKept(page: Page): Promise<void> {
  const late = Date.now() + patience;
  while (Date.now() < late) {
    const stage = await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state);
    if (stage === 'activated') return;
    await page.waitForTimeout(100);
  }
  throw new Error('the workbench was not kept for use without a network');
}
