import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
// Counts of an earlier run must not be taken for those of a run that crashed.
rmSync(`${root}/artifacts/test-results.json`, { force: true });
const args = ['node_modules/vitest/vitest.mjs', 'run', ...process.argv.slice(2)];
const run = spawnSync(process.execPath, args, { cwd: root, stdio: 'inherit' });
process.exit(run.status ?? 1);
