import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Page, Request } from 'playwright-core';

/** A program that the first visit loads, in the page or in one of its threads. */
export interface LoadedProgram {
  /** Its path in the build, such as "assets/index-1a2b3c4d.js". */
  readonly path: string;
  readonly bytes: number;
  /** Compressed as a web server does it, level 6. */
  readonly gzipBytes: number;
}

/** Milliseconds without another request after which a first load is over. */
const quiet = 1_000;

/**
 * Opens the workbench for the first time in a page and says which programs that took until nothing more was asked for. What is only put
 * away for use without a network does not count.
 */
export async function measureFirstLoad(page: Page, address: string): Promise<readonly LoadedProgram[]> {
  const paths = new Set<string>();
  let last = Date.now();
  const note = (request: Request) => {
    if (request.serviceWorker() !== null || !request.url().startsWith(address)) return;
    last = Date.now();
    const path = request.url().slice(address.length).split(/[?#]/)[0] ?? '';
    if (path.endsWith('.js')) paths.add(path);
  };
  page.context().on('request', note);
  await page.goto(address, { waitUntil: 'load' });
  while (Date.now() - last < quiet) await page.waitForTimeout(quiet / 4);
  page.context().off('request', note);
  return [...paths].filter((path) => path !== 'sw.js').map(weigh);
}

/** The programs as a table, the heaviest first, and their sum in compressed bytes. */
export function describeLoad(programs: readonly LoadedProgram[]): {
  readonly table: string;
  readonly gzipBytes: number;
} {
  const rows = [...programs].sort((a, b) => b.gzipBytes - a.gzipBytes);
  const gzipBytes = rows.reduce((sum, row) => sum + row.gzipBytes, 0);
  const kilo = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`.padStart(10);
  const lines = rows.map((row) => `${kilo(row.gzipBytes)} (${kilo(row.bytes).trim()} as it is)  ${row.path}`);
  return { table: [...lines, `${kilo(gzipBytes)} in all, compressed`].join('\n'), gzipBytes };
}

function weigh(path: string): LoadedProgram {
  const content = readFileSync(`dist/app/${path}`);
  return { path, bytes: content.length, gzipBytes: gzipSync(content, { level: 6 }).length };
}
