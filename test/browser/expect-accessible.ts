import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** The success criteria of WCAG 2.2 at levels A and AA, by axe's names for the versions that they came with. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Fails with each rule that the page breaks as it is now, and where. What axe cannot decide by itself is not counted. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations, passes } = await new AxeBuilder({ page }).withTags(tags).analyze();
  const broken = violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id} (${help}): ${target.join(' ')}\n${failureSummary}`),
  );
  expect(broken).toEqual([]);
  // An empty or broken page has no fault either.
  expect(passes.length).toBeGreaterThan(0);
}
