import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { buildAll } from './build.mjs';
import { ensureInstalled, root } from './ensure-installed.mjs';

ensureInstalled();
if (!(await buildAll())) process.exit(1);

const cli = `${root}/dist/sliderule.js`;
if (!existsSync(cli)) {
  console.error('missing src/cli/main.ts: there is nothing to start yet');
  process.exit(1);
}
// Without arguments the demo: the main job on the demo playbook. `npm start -- <command>` runs any other.
const args = process.argv.length > 2 ? process.argv.slice(2) : ['demo'];
const run = spawnSync(process.execPath, ['--enable-source-maps', cli, ...args], { cwd: root, stdio: 'inherit' });
process.exit(run.status ?? 1);
