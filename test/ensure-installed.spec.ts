import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, test } from 'vitest';

const script = fileURLToPath(new URL('../scripts/ensure-installed.mjs', import.meta.url));
const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A repository that wants one package, beside a folder that others use; in place of npm one that only tells that it was called. */
function repository() {
  const folder = mkdtempSync(join(tmpdir(), 'sliderule-install-'));
  folders.push(folder);
  const [root, shared, bin] = ['repository', 'shared', 'bin'].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  for (const made of [join(root, 'scripts'), shared, bin]) mkdirSync(made, { recursive: true });
  cpSync(script, join(root, 'scripts', 'ensure-installed.mjs'));
  const packages = { 'node_modules/oar': { version: '1.0.0' } };
  writeFileSync(join(root, 'package-lock.json'), JSON.stringify({ packages }));
  const called = join(folder, 'called');
  writeFileSync(join(bin, 'npm'), `#!/bin/sh\necho "$@" > "${called}"\n`);
  chmodSync(join(bin, 'npm'), 0o755);
  const args = [
    '--input-type=module',
    '-e',
    "import('./scripts/ensure-installed.mjs').then((it) => it.ensureInstalled())",
  ];
  const env = { ...process.env, PATH: `${bin}${delimiter}${process.env.PATH}` };
  const run = () => spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8', env });
  const start = () => {
    const child = spawn(process.execPath, args, { cwd: root, env, stdio: ['ignore', 'pipe', 'inherit'] });
    return { stdout: child.stdout, ended: once(child, 'close').then(([code]) => code as number | null) };
  };
  return { root, shared, packages, run, start, wasCalled: () => existsSync(called) };
}

describe.skipIf(process.platform === 'win32')('what is missing', () => {
  test('is installed', () => {
    const { run, wasCalled } = repository();
    expect(run()).toMatchObject({ status: 0, stdout: expect.stringContaining('npm ci') });
    expect(wasCalled()).toBe(true);
  });

  test('is installed by one command at a time, and anew after one that died', () => {
    const { root, run, wasCalled } = repository();
    const lock = join(root, '.installing');
    const dead = spawnSync(process.execPath, ['-e', '']).pid;
    writeFileSync(lock, String(dead));
    expect(run()).toMatchObject({ status: 0, stdout: expect.stringContaining('npm ci') });
    expect([wasCalled(), existsSync(lock)]).toEqual([true, false]);
  });

  test('is waited for while another installs it', async () => {
    const { root, packages, start, wasCalled } = repository();
    const lock = join(root, '.installing');
    writeFileSync(lock, String(process.pid));
    const { stdout, ended } = start();
    await once(stdout, 'data');
    mkdirSync(join(root, 'node_modules'));
    writeFileSync(join(root, 'node_modules', '.package-lock.json'), JSON.stringify({ packages }));
    rmSync(lock);
    expect(await ended).toBe(0);
    expect([wasCalled(), existsSync(lock)]).toEqual([false, false]);
  });

  test('is not installed through a link, which npm would empty', () => {
    const { root, shared, run, wasCalled } = repository();
    symlinkSync(shared, join(root, 'node_modules'));
    const { status, stderr } = run();
    expect(status).toBe(1);
    expect(stderr).toMatch(
      /^node_modules is a link to \S+shared, .* nothing is done: remove the link, then repeat\.\n$/,
    );
    expect(wasCalled()).toBe(false);
  });

  test('is nothing when the link leads to what the lockfile names', () => {
    const { root, shared, packages, run, wasCalled } = repository();
    symlinkSync(shared, join(root, 'node_modules'));
    writeFileSync(join(shared, '.package-lock.json'), JSON.stringify({ packages }));
    expect(run()).toMatchObject({ status: 0, stdout: '', stderr: '' });
    expect(wasCalled()).toBe(false);
  });
});
