import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { root } from './ensure-installed.mjs';

const output = `${root}/dist/app`;
const stamp = `${root}/dist/app.stamp`;

/** All that the built workbench is made of. A package's version is in the lockfile. */
const sources = [
  'src/app',
  'src/clip',
  'src/press',
  'src/teach',
  'src/worker',
  'src/render',
  'src/playbook',
  'src/engine',
  'vite.config.ts',
  'tsconfig.base.json',
  'package-lock.json',
  'scripts/build-app.mjs',
  'scripts/vite',
];

/** Builds the workbench into dist/app when its sources changed since the last time; false when it does not compile. */
export async function buildApp() {
  if (!existsSync(`${root}/src/app/index.html`)) {
    console.log('not built: dist/app (src/app/index.html does not exist yet)');
    return true;
  }
  const wanted = hashOfSources();
  if (existsSync(`${output}/index.html`) && readStamp() === wanted) return true;
  // Built beside and then renamed into place: who reads dist/app at this moment sees the old one or the new one, whole.
  const draft = `${output}.${process.pid}`;
  try {
    // The tests have another word here, and would test another workbench than the one that is used.
    process.env.NODE_ENV = 'production';
    const { build } = await import('vite');
    await build({
      configFile: `${root}/vite.config.ts`,
      build: { outDir: draft },
      logLevel: 'warn',
    });
  } catch (error) {
    console.error(`not built: dist/app (${error instanceof Error ? error.message : error})`);
    // A stale build would let the tests of the real thing pass on yesterday's code.
    for (const path of [draft, output, stamp]) rmSync(path, { recursive: true, force: true });
    return false;
  }
  replaceOutput(draft);
  writeFileSync(stamp, wanted);
  return true;
}

function replaceOutput(draft) {
  const old = `${draft}.old`;
  // Another build may end at the same moment: the later one stays.
  for (let tries = 3; existsSync(draft); tries--) {
    try {
      if (existsSync(output)) renameSync(output, old);
      renameSync(draft, output);
    } catch (error) {
      if (tries === 0) throw error;
    }
    rmSync(old, { recursive: true, force: true });
  }
}

function readStamp() {
  try {
    return readFileSync(stamp, 'utf8');
  } catch {
    return undefined;
  }
}

// By content: a checkout sets file times in any order. Tests and fixtures are not part of what is built.
function hashOfSources() {
  const hash = createHash('sha256');
  for (const path of sources.flatMap(filesOf).sort()) {
    hash
      .update(`${path}\0`)
      .update(readFileSync(`${root}/${path}`))
      .update('\0');
  }
  return hash.digest('hex');
}

function filesOf(source) {
  if (/[.]\w+$/.test(source)) return existsSync(`${root}/${source}`) ? [source] : [];
  return readdirSync(`${root}/${source}`, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/[.](spec|props|fixture|browser|snap)[.]tsx?$/.test(entry.name))
    .map((entry) => `${entry.parentPath ?? entry.path}/${entry.name}`.slice(root.length).replaceAll('\\', '/'));
}
