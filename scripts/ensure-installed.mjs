// Plain Node without packages: this runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { lstatSync, readFileSync, readlinkSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * Runs `npm ci` when what is installed differs from the lockfile; does nothing, and says nothing, otherwise. Refuses where node_modules is a link:
 * npm would empty the folder that it leads to, which others may use.
 */
export function ensureInstalled() {
  if (isInstalled()) return;
  const target = linkTarget('node_modules');
  if (target !== undefined) {
    console.error(
      `node_modules is a link to ${target}, which holds other packages than package-lock.json names. Installing would empty that folder, so nothing is done: remove the link, then repeat.`,
    );
    process.exit(1);
  }
  const status = oneAtATime(() => (isInstalled() ? 0 : install()));
  if (status !== 0) {
    console.error('npm ci failed. Once the network is there, repeat: npm ci');
    process.exit(status);
  }
}

function install() {
  console.log('Installing what package-lock.json names (npm ci) ...');
  const npm = spawnSync('npm', ['ci'], { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  return npm.status ?? 1;
}

/** Holds the number of the process that installs. Beside node_modules, which npm empties. */
const lock = `${root}/.installing`;

/** Two commands that install at once would leave half of each: the second waits for the first, and takes its place when that has died. */
function oneAtATime(act) {
  let said = false;
  while (!taken()) {
    if (!said) console.log('Another command is installing. Waiting for it ...');
    said = true;
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 500);
  }
  try {
    return act();
  } finally {
    rmSync(lock, { force: true });
  }
}

/** Takes the lock, unless a process that lives has it. */
function taken() {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if (error.code !== 'EEXIST') throw error;
    if (!isAlive(Number(readText(lock)))) rmSync(lock, { force: true });
    return false;
  }
}

function isAlive(pid) {
  // Just made, and its number not written yet.
  if (!(pid > 0)) return readText(lock) === '';
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}

function readText(path) {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

// npm keeps a copy of what it really installed. Compared by content, because a checkout or a second
// `npm install` sets file times in either order. A package missing on this platform is optional in the lockfile.
function isInstalled() {
  const wanted = packagesIn('package-lock.json');
  const present = packagesIn('node_modules/.package-lock.json');
  if (wanted === undefined || present === undefined) return false;
  return Object.entries(wanted).every(
    ([path, entry]) => path === '' || entry.optional === true || present[path]?.version === entry.version,
  );
}

/** Where a link in the repository leads; undefined for what is no link, or not there. */
function linkTarget(path) {
  const full = `${root}/${path}`;
  const found = lstatSync(full, { throwIfNoEntry: false });
  return found?.isSymbolicLink() === true ? readlinkSync(full) : undefined;
}

function packagesIn(lockfile) {
  try {
    return JSON.parse(readFileSync(`${root}/${lockfile}`, 'utf8')).packages;
  } catch {
    return undefined;
  }
}
