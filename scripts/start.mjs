import { spawn, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { relative } from 'node:path';
import { ensureInstalled, root } from './ensure-installed.mjs';

const parent = process.ppid;
// Without arguments the workbench. `npm start -- <command>` runs any other.
const args = process.argv.length > 2 ? process.argv.slice(2) : ['open'];

ensureInstalled();
// In a process of its own: this one lives as long as the workbench is open and should weigh nothing.
const build = [`${root}/scripts/build.mjs`, ...(args[0] === 'open' ? [] : ['node'])];
if (spawnSync(process.execPath, build, { stdio: 'inherit' }).status !== 0) process.exit(1);

const cli = `${root}/dist/sliderule.js`;
if (!existsSync(cli)) {
  console.error('missing src/cli/main.ts: there is nothing to start yet');
  process.exit(1);
}
// npm moves into the package's folder: files are named from where the person is.
const cwd = process.env.INIT_CWD ?? process.cwd();
// What the program says to type next must work from there.
const program = relative(root, cwd).startsWith('..') ? `npm --prefix ${JSON.stringify(root)} start --` : 'npm start --';
const run = spawn(process.execPath, ['--enable-source-maps', cli, ...args], {
  cwd,
  env: { ...process.env, SLIDERULE_PROGRAM: program },
  stdio: 'inherit',
});
// Ctrl-C reaches the program by the terminal; this process only waits for its last words.
process.on('SIGINT', () => undefined);
// Who ends this process means the program: a server left behind would keep its port.
for (const signal of ['SIGTERM', 'SIGHUP']) process.on(signal, () => run.kill(signal));
// npm tells only the shell between itself and this process, and a shell that dies tells nobody.
setInterval(() => process.ppid === parent || run.kill(), 500).unref();
run.on('error', (error) => {
  console.error(`cannot start ${cli}: ${error.message}`);
  process.exitCode = 1;
});
run.on('close', (code) => {
  process.exitCode = code ?? 1;
});
