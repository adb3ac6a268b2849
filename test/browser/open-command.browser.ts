import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { openProgram } from './open-program.ts';
import { waitUntilKept } from './wait-until-kept.ts';

browserTest('`open` prints where the workbench is, shows it there, and ends with Ctrl-C', async ({ visit }) => {
  const program = await openProgram();
  try {
    const { page, context } = await visit();
    const answer = await page.goto(program.address);
    expect(answer?.status()).toBe(200);
    await page.getByRole('main').waitFor();
    expect(program.printed()).toMatch(/^The workbench: http:\/\/127\.0\.0\.1:\d+\/\n/);
    // Its threads are loaded too, and nothing else comes after that.
    await page.waitForLoadState('networkidle');
    // A file that is still on its way into the browser when the program ends would be a request that fails.
    await waitUntilKept(page);
    // The page stays open: a browser that holds on to its connection must not keep the program alive.
    expect(await program.interrupt()).toBe(0);
    expect(context.pages()).toHaveLength(1);
  } finally {
    program.kill();
  }
});
