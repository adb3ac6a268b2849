import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { longPatience } from './play-place.ts';
import { waitUntilKept } from './wait-until-kept.ts';

browserTest('the workbench opens, by itself and isolated', async ({ page }) => {
  await page.getByRole('main').waitFor();
  expect(await page.evaluate(() => window.crossOriginIsolated)).toBe(true);
  await expectAccessible(page);
  await keepScreenshot(page, 'first-visit');
});

browserTest('after one visit it opens with the network off', async ({ visit, address }) => {
  const { page, context } = await visit();
  await page.goto(address);
  await waitUntilKept(page);
  await context.setOffline(true);
  await page.reload();
  await page.getByRole('main').waitFor();
  expect(await page.evaluate(() => window.crossOriginIsolated)).toBe(true);
  expect(await page.evaluate(() => navigator.serviceWorker.controller?.state)).toBe('activated');
});

browserTest('the card of a shutoff says whom it shuts off', async ({ page }) => {
  const card = page.getByRole('button', { name: /^Shutoff: .*, shuts off \d+ at [A-Z]+$/ });
  await card.waitFor({ timeout: longPatience });
  await card.getByText(/^shuts off \d+ at [A-Z]+$/).waitFor();
  await card.scrollIntoViewIfNeeded();
  await keepScreenshot(page, 'shut-off');
});
