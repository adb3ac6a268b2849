// Bundles a TypeScript entry and runs it in the repository's root: node scripts/run-ts.mjs bench/main.ts [arguments]
import { spawnSync } from 'node:child_process';
import { basename, dirname } from 'node:path';
import { buildNode } from './build.mjs';
import { bundle } from './bundle.mjs';
import { ensureInstalled, root } from './ensure-installed.mjs';

const [entry, ...args] = process.argv.slice(2);
// Beside the other bundles, so that code which looks for the worker next to itself finds it.
const outfile = `dist/${basename(dirname(entry))}-${basename(entry, '.ts')}.js`;

ensureInstalled();
await buildNode();
if (await bundle(entry, outfile).catch(() => process.exit(1))) {
  const run = spawnSync(process.execPath, ['--enable-source-maps', outfile, ...args], { cwd: root, stdio: 'inherit' });
  process.exitCode = run.status ?? 1;
} else {
  console.error(`missing entry: ${entry} does not exist yet`);
  process.exitCode = 1;
}
