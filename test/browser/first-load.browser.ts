import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { describeLoad, measureFirstLoad } from './first-load.ts';

/** Compressed bytes of JavaScript, threads included. A coach opens it on the school's network, or on a phone at the field. */
const mostBytes = 300_000;

browserTest('the first load takes no more JavaScript than a phone at a field can have', async ({ visit, address }) => {
  const { page } = await visit();
  const programs = await measureFirstLoad(page, address);
  const { table, gzipBytes } = describeLoad(programs);
  console.log(`The first load:\n${table}`);
  expect(programs.length).toBeGreaterThan(0);
  expect(gzipBytes, table).toBeLessThanOrEqual(mostBytes);
});
