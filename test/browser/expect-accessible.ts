import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** The success criteria of WCAG 2.2 at levels A and AA, by axe's names for the versions that they came with. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Fails with each rule that the page breaks as it is now, and where. What axe cannot decide by itself is not counted. */
export async function expectAccessible(page: Page): Promise<void> {
  // A page inside the page would have to be read by itself.
  expect(page.frames()).toHaveLength(1);
  const { violations, passes } = await readWhenStill(page);
  const broken = violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} (${help}): ${target.join(' ')}\n${failureSummary}`),
  );
  expect(broken).toEqual([]);
  // An empty or broken page has no fault either.
  expect(passes).toBeGreaterThan(0);
}

interface Reading {
  readonly violations: readonly axe.Result[];
  readonly passes: number;
}

/** Milliseconds in which a page that was changing has changed. */
const change = 300;

/**
 * Reads a page once more where something is broken: of a page that changes while it is read, the letters' colour may be that of one moment and
 * the ground's that of another. What is really broken is so the second time too.
 */
async function readWhenStill(page: Page): Promise<Reading> {
  const first = await readByAxe(page);
  if (first.violations.length === 0) return first;
  await page.waitForTimeout(change);
  return readByAxe(page);
}

/** What is broken, and how many rules are kept. All rules run; only of broken ones is told where, which takes a third of the time. */
async function readByAxe(page: Page): Promise<Reading> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(async (values) => {
    const reader = (window as unknown as { readonly axe: typeof axe }).axe;
    const { violations, passes } = await reader.run({
      runOnly: { type: 'tag', values },
      resultTypes: ['violations'],
    });
    return { violations, passes: passes.length };
  }, tags);
}
