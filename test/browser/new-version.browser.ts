import { copyFileSync, cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { browserTest } from './browser-test.ts';
import { expectAccessible } from './expect-accessible.ts';
import { keepScreenshot } from './keep-screenshot.ts';
import { openProgram } from './open-program.ts';
import { waitUntilKept } from './wait-until-kept.ts';

const folder = 'artifacts/new-version';

/** A built program of its own, whose page says which version it is. */
function writeVersion(version: string): void {
  const index = readFileSync('dist/app/index.html', 'utf8').replace(
    '</head>',
    `<meta name="version" content="${version}"></head>`,
  );
  const worker = readFileSync('dist/app/sw.js', 'utf8').replace(
    /(url:"index\.html",revision:")\w+(")|(revision:")\w+(",url:"index\.html")/,
    `$1$3${version}$2$4`,
  );
  expect(worker).toContain(version);
  writeFileSync(`${folder}/app/index.html`, index);
  writeFileSync(`${folder}/app/sw.js`, worker);
}

function versionOf(page: Page): Promise<string | null> {
  return page.locator('meta[name=version]').getAttribute('content');
}

browserTest('a new version waits until it is asked for, and then takes only the tab that asked', async ({ visit }) => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  cpSync('dist/app', `${folder}/app`, { recursive: true });
  copyFileSync('dist/sliderule.js', `${folder}/sliderule.js`);
  writeVersion('first');
  let program = await openProgram(`${folder}/sliderule.js`);
  try {
    const { address } = program;
    const { page, context } = await visit();
    await page.goto(address);
    await waitUntilKept(page);
    await program.interrupt();

    writeVersion('second');
    program = await openProgram(`${folder}/sliderule.js`, Number(new URL(address).port));
    expect(program.address).toBe(address);
    await page.reload();
    const other = await context.newPage();
    await other.goto(address);
    const take = page.getByRole('button', { name: 'Take it now' });
    await take.waitFor();
    // Whoever does not ask goes on with what he has, however often he loads the page.
    await page.reload();
    await take.waitFor();
    expect([await versionOf(page), await versionOf(other)]).toEqual(['first', 'first']);

    await expectAccessible(page);
    await keepScreenshot(page, 'new-version');
    await take.click();
    await page.locator('meta[name=version][content=second]').waitFor({ state: 'attached' });
    await other.getByRole('button', { name: 'Load it again' }).waitFor();
    await expectAccessible(other);
    expect(await versionOf(other)).toBe('first');
  } finally {
    program.kill();
    rmSync(folder, { recursive: true, force: true });
  }
});
