// Bundles a TypeScript entry and runs it: node scripts/run-ts.mjs bench/main.ts [arguments]
import { spawnSync } from 'node:child_process';
import { basename, dirname } from 'node:path';
import { buildAll } from './build.mjs';
import { bundle } from './bundle.mjs';
import { ensureInstalled, root } from './ensure-installed.mjs';

const [entry, ...args] = process.argv.slice(2);
ensureInstalled();
try {
  await buildAll();
  // Beside the other bundles, so that code which looks for the worker next to itself finds it.
  const outfile = `dist/${basename(dirname(entry))}-${basename(entry, '.ts')}.js`;
  if (await bundle(entry, outfile)) {
    const run = spawnSync(process.execPath, ['--enable-source-maps', outfile, ...args], {
      cwd: root,
      stdio: 'inherit',
    });
    process.exitCode = run.status ?? 1;
  } else {
    console.error(`missing entry: ${entry} does not exist yet`);
    process.exitCode = 1;
  }
} catch {
  // esbuild has printed what does not compile.
  process.exitCode = 1;
}
