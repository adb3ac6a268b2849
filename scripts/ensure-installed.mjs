// Plain Node without packages: this runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

/** Runs `npm ci` when what is installed differs from the lockfile; does nothing, and says nothing, otherwise. */
export function ensureInstalled() {
  if (isInstalled()) return;
  console.log('Installing what package-lock.json names (npm ci) ...');
  const npm = spawnSync('npm', ['ci'], { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  if (npm.status !== 0) {
    console.error('npm ci failed. Once the network is there, repeat: npm ci');
    process.exit(npm.status ?? 1);
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

function packagesIn(lockfile) {
  try {
    return JSON.parse(readFileSync(`${root}/${lockfile}`, 'utf8')).packages;
  } catch {
    return undefined;
  }
}
