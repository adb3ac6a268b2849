import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';

/** `sliderule open` as it is typed, at any free port; killed by its number when the test ends before it does. */
function open() {
  const child = spawn(process.execPath, ['dist/sliderule.js', 'open', '--port', '0', '--no-browser'], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let printed = '';
  const address = new Promise<string>((resolve, reject) => {
    const read = (text: string) => {
      printed += text;
      const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed)?.[0];
      if (found !== undefined) resolve(found);
    };
    for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', read);
    child.once('close', () => reject(new Error(`ended at once: ${printed}`)));
  });
  return { child, address, printed: () => printed };
}

browserTest('`open` prints where the workbench is, shows it there, and ends with Ctrl-C', async ({ visit }) => {
  const { child, address, printed } = open();
  try {
    const { page, context } = await visit();
    const answer = await page.goto(await address);
    expect(answer?.status()).toBe(200);
    await page.getByRole('main').waitFor();
    expect(printed()).toMatch(/^The workbench: http:\/\/127\.0\.0\.1:\d+\/\n/);
    // The page stays open: a browser that holds on to its connection must not keep the program alive.
    child.kill('SIGINT');
    const [code] = await once(child, 'close');
    expect(code).toBe(0);
    expect(context.pages()).toHaveLength(1);
  } finally {
    child.kill('SIGKILL');
  }
});
