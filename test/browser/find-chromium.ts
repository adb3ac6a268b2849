import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

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

/** The npm package's browser: a script of its own finds and unpacks it, for the command line too. */
function npmBrowser(): Chromium {
  const run = spawnSync(process.execPath, ['scripts/npm-chromium.mjs'], { encoding: 'utf8' });
  if (run.status !== 0) throw new Error(run.stderr);
  const { executable, environment, origin } = JSON.parse(run.stdout) as Chromium;
  return { executable, environment: { ...inherited(), ...environment }, origin };
}
