import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';
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
