import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** The screens that the workbench must work on: a phone, a tablet held upright, a laptop, a desk. CSS pixels. */
export const screenSizes = [
  { width: 360, height: 740 },
  { width: 820, height: 1180 },
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
] as const;

const folder = 'artifacts/screens';

/**
 * Keeps the page as it is now at each of the four sizes, as artifacts/screens/<name>-<width>.png, and fails when it is wider than one of
 * them. The page has its own size back afterwards.
 */
export async function keepScreenshot(page: Page, name: string): Promise<void> {
  const before = page.viewportSize();
  mkdirSync(folder, { recursive: true });
  const tooWide: string[] = [];
  for (const size of screenSizes) {
    await page.setViewportSize(size);
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    // Animations end first, so that the same state gives the same picture.
    await page.screenshot({ path: `${folder}/${name}-${size.width}.png`, animations: 'disabled' });
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    if (width > size.width) tooWide.push(`${name} is ${width} px wide on a screen of ${size.width} px`);
  }
  if (before !== null) await page.setViewportSize(before);
  expect(tooWide).toEqual([]);
}
