// Says as JSON where the browser is that npm installed for the tests, and what it needs around it; unpacks it at its first use:
// node scripts/npm-chromium.mjs
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from './ensure-installed.mjs';

/** Milliseconds in which a quarter of a gigabyte is unpacked even on a slow disk. */
const unpackPatience = 180_000;

/**
 * The npm package's browser, unpacked into a folder of its own and renamed into place, so that two processes that begin together never
 * start half a browser. It brings its own system libraries and fonts along, for machines that have none. Throws where the package is missing.
 */
export function npmChromium() {
  const { version } = JSON.parse(readFileSync(`${root}/node_modules/@sparticuz/chromium/package.json`, 'utf8'));
  const folder = `${root}/node_modules/.cache/chromium-${version}`;
  const executable = join(folder, 'chromium');
  if (!existsSync(executable)) unpack(folder);
  const libraries = [join(folder, 'al2023/lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':');
  return {
    executable,
    environment: { LD_LIBRARY_PATH: libraries, FONTCONFIG_PATH: join(folder, 'fonts') },
    origin: `npm's, version ${version}`,
  };
}

// In a process of its own, because the package decides by variables that must be set before it is loaded, and sets others itself:
// TMPDIR is where it unpacks to; AWS_EXECUTION_ENV makes it unpack its libraries too, without which it does not start on a bare machine.
function unpack(folder) {
  const draft = `${folder}.${process.pid}`;
  mkdirSync(draft, { recursive: true });
  const program = "import chromium from '@sparticuz/chromium'; await chromium.executablePath();";
  const run = spawnSync(process.execPath, ['--input-type=module', '-e', program], {
    cwd: root,
    env: { ...process.env, TMPDIR: draft, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' },
    encoding: 'utf8',
    timeout: unpackPatience,
  });
  try {
    if (run.status !== 0)
      throw new Error(`npm's Chromium could not be unpacked: ${run.stderr || run.error || run.signal}`);
    writeFileSync(join(draft, 'fonts/fonts.conf'), fontSettings(folder));
    if (!existsSync(folder)) renameSync(draft, folder);
  } finally {
    rmSync(draft, { recursive: true, force: true });
  }
}

// The package's own settings look for its fonts in /tmp.
function fontSettings(folder) {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${folder}/fonts</dir><cachedir>${folder}/fonts-cache</cachedir></fontconfig>
`;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  process.stdout.write(`${JSON.stringify(npmChromium())}\n`);
}
