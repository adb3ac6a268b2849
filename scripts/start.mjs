import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { relative } from 'node:path';
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
// npm moves into the package's folder: files are named from where the person is.
const cwd = process.env.INIT_CWD ?? process.cwd();
// What the program says to type next must work from there.
const program = relative(root, cwd).startsWith('..') ? `npm --prefix ${JSON.stringify(root)} start --` : 'npm start --';
const run = spawnSync(process.execPath, ['--enable-source-maps', cli, ...args], {
  cwd,
  env: { ...process.env, SLIDERULE_PROGRAM: program },
  stdio: 'inherit',
});
process.exit(run.status ?? 1);
