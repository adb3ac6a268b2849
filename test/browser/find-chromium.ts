import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';

/** A browser to test in, and what it needs around it. */
export interface Chromium {
  readonly executable: string;
  /** The whole environment to start it with. */
  readonly environment: Readonly<Record<string, string>>;
  /** Where it comes from, in words for the log. */
  readonly origin: string;
}

const systemNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'microsoft-edge'];
const systemPlaces = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:/Program Files/Google/Chrome/Application/chrome.exe',
  'C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe',
];

/** Milliseconds in which a quarter of a gigabyte is unpacked even on a slow disk. */
const unpackPatience = 180_000;

/**
 * The browser that CHROMIUM_PATH names, else one of the system, else the one that npm installed. Unpacks the last at its first use.
 * Throws an Error that says what to do when there is none.
 */
export function findChromium(): Chromium {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && named !== '') {
    if (!existsSync(named)) throw new Error(`CHROMIUM_PATH names no file: ${named}`);
    return { executable: named, environment: inherited(), origin: 'CHROMIUM_PATH' };
  }
  const system = systemBrowser();
  if (system !== undefined) return { executable: system, environment: inherited(), origin: "the system's" };
  if (process.platform === 'linux' && process.arch === 'x64') return npmBrowser();
  throw new Error(
    'No browser to test in. Install Chromium or Chrome, or name one: CHROMIUM_PATH=/path/to/chrome npm test',
  );
}

function inherited(): Record<string, string> {
  return Object.fromEntries(
    Object.entries(process.env).flatMap(([name, value]) => (value === undefined ? [] : [[name, value]])),
  );
}

function systemBrowser(): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = systemNames.flatMap((name) => folders.map((folder) => join(folder, name)));
  return [...onPath, ...systemPlaces].find(isExecutable);
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * The npm package's browser, unpacked into a folder of its own and renamed into place, so that two processes that begin together never
 * start half a browser. It brings its own system libraries and fonts along, for machines that have none.
 */
function npmBrowser(): Chromium {
  const { version } = JSON.parse(readFileSync('node_modules/@sparticuz/chromium/package.json', 'utf8'));
  const folder = resolve(`node_modules/.cache/chromium-${version}`);
  const executable = join(folder, 'chromium');
  if (!existsSync(executable)) unpack(folder);
  const libraries = [join(folder, 'al2023/lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':');
  return {
    executable,
    environment: { ...inherited(), LD_LIBRARY_PATH: libraries, FONTCONFIG_PATH: join(folder, 'fonts') },
    origin: `npm's, version ${version}`,
  };
}

// In a process of its own, because the package decides by variables that must be set before it is loaded, and sets others itself:
// TMPDIR is where it unpacks to; AWS_EXECUTION_ENV makes it unpack its libraries too, without which it does not start on a bare machine.
function unpack(folder: string): void {
  const draft = `${folder}.${process.pid}`;
  mkdirSync(draft, { recursive: true });
  const program = "import chromium from '@sparticuz/chromium'; await chromium.executablePath();";
  const run = spawnSync(process.execPath, ['--input-type=module', '-e', program], {
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
function fontSettings(folder: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${folder}/fonts</dir><cachedir>${folder}/fonts-cache</cachedir></fontconfig>
`;
}
