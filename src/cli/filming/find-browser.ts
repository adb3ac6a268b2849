import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A browser that can be driven without being seen. */
export interface FoundBrowser {
  readonly executable: string;
  /** What it needs beside the environment that there is. */
  readonly environment: Readonly<Record<string, string>>;
}

/** The variable that names a browser, before all that are looked for. */
export const browserVariable = 'CHROMIUM_PATH';

/** What is looked at, so that a test can have another machine. */
export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly isExecutable: (path: string) => boolean;
}

export const thisMachine: Machine = { platform: process.platform, environment: process.env, isExecutable };

/**
 * A browser of the Chromium family: the one that `CHROMIUM_PATH` names, else one on the search path, else one in its system's usual places. Undefined when there is
 * none, also when the variable names no program: who named one wants that one.
 */
export function findBrowser(machine: Machine = thisMachine): FoundBrowser | undefined {
  const named = machine.environment[browserVariable];
  const candidates = named !== undefined && named !== '' ? [named] : [...onPath(machine), ...usualPlaces(machine)];
  const executable = candidates.find(machine.isExecutable);
  return executable === undefined ? undefined : { executable, environment: {} };
}

/** The browser that npm installs for the tests of a checkout, unpacked when it was not yet. Undefined in a program without its sources, or where that package is missing. */
export function findCheckoutBrowser(worker: URL, machine: Machine = thisMachine): FoundBrowser | undefined {
  const script = fileURLToPath(new URL('../scripts/npm-chromium.mjs', worker));
  if (machine.environment[browserVariable] || !existsSync(script)) return undefined;
  const run = spawnSync(process.execPath, [script], { encoding: 'utf8' });
  return run.status === 0 ? (JSON.parse(run.stdout) as FoundBrowser) : undefined;
}

const names = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
  'microsoft-edge-stable',
];

function onPath({ platform, environment }: Machine): readonly string[] {
  // Windows keeps its browsers off the search path, and what stands on it there needs an ending.
  if (platform === 'win32') return [];
  const folders = (environment.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

const macApplications = [
  'Google Chrome.app/Contents/MacOS/Google Chrome',
  'Chromium.app/Contents/MacOS/Chromium',
  'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];
const windowsPrograms = [
  'Google/Chrome/Application/chrome.exe',
  'Chromium/Application/chrome.exe',
  'Microsoft/Edge/Application/msedge.exe',
];

function usualPlaces({ platform, environment }: Machine): readonly string[] {
  const { HOME, LOCALAPPDATA } = environment;
  switch (platform) {
    case 'darwin':
      return ['/Applications', ...(HOME ? [`${HOME}/Applications`] : [])].flatMap((folder) =>
        macApplications.map((place) => `${folder}/${place}`),
      );
    case 'win32':
      return [environment.ProgramFiles, environment['ProgramFiles(x86)'], LOCALAPPDATA]
        .filter((folder) => folder !== undefined && folder !== '')
        .flatMap((folder) => windowsPrograms.map((place) => `${folder}/${place}`));
    default:
      return ['/snap/bin/chromium'];
  }
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
