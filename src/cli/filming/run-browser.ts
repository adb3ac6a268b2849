import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { FoundBrowser } from './find-browser.ts';

/** A browser that nobody sees, with a profile of its own. */
export interface RunningBrowser {
  /** Resolves when it ends by itself, with the last that it said. */
  readonly ended: Promise<string>;
  /** Ends it with all of its processes and removes its profile. */
  readonly close: () => Promise<void>;
}

/** It talks to nobody, asks nothing, and does not slow down because nobody looks. */
const switches = [
  '--headless',
  '--disable-gpu',
  '--mute-audio',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-extensions',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-background-timer-throttling',
  '--disable-renderer-backgrounding',
  // Letters as wide as they are measured, not as the screen's pixels would have them.
  '--font-render-hinting=none',
  // Its orders would come by two more pipes. None ever come; but when this program ends, however it ends, they close, and the browser ends too.
  '--remote-debugging-pipe',
];

/** Milliseconds in which a browser ends by itself when it is asked to. */
const patience = 1000;
const saidLetters = 2000;

/** Opens `address` in a browser without a window. */
export async function runBrowser({ executable, environment }: FoundBrowser, address: string): Promise<RunningBrowser> {
  const profile = await mkdtemp(join(tmpdir(), 'sliderule-film-'));
  const child = spawn(executable, [...switches, ...sandbox(), `--user-data-dir=${profile}`, address], {
    env: { ...process.env, ...environment, ...temporaries(profile) },
    stdio: ['ignore', 'ignore', 'pipe', 'pipe', 'pipe'],
    // A group of its own: Ctrl-C in the shell is told to this program, which ends the browser in order.
    detached: process.platform !== 'win32',
    windowsHide: true,
  });
  let said = '';
  child.stderr?.on('data', (text: Buffer) => {
    said = `${said}${text}`.slice(-saidLetters);
  });
  for (const stream of child.stdio.slice(3)) stream?.on('error', () => undefined);
  const ended = new Promise<string>((resolve) => {
    child.on('error', (error) => resolve(error.message));
    child.on('exit', () => resolve(lastLine(said)));
  });
  return { ended, close: () => close(child, ended, profile) };
}

/** Letters of a folder's path up to which a browser can have a socket below it: its name is some 50 letters more, and a socket's path 104 at most. */
const longestFolder = 50;

// What it leaves among temporary files goes with its profile.
function temporaries(profile: string): Readonly<Record<string, string>> {
  if (process.platform === 'win32') return { TEMP: profile, TMP: profile };
  return profile.length <= longestFolder ? { TMPDIR: profile } : {};
}

// Who is root has no sandbox; what is opened is a page of our own.
function sandbox(): readonly string[] {
  return process.getuid?.() === 0 ? ['--no-sandbox'] : [];
}

async function close(child: ChildProcess, ended: Promise<string>, profile: string): Promise<void> {
  if (child.exitCode === null && child.signalCode === null && child.pid !== undefined) {
    signal(child, 'SIGTERM');
    const late = setTimeout(() => signal(child, 'SIGKILL'), patience);
    await ended;
    clearTimeout(late);
  }
  // A process that ends may still write for a moment.
  await rm(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 100 }).catch(() => undefined);
}

function signal(child: ChildProcess, name: 'SIGTERM' | 'SIGKILL'): void {
  try {
    if (process.platform === 'win32') child.kill(name);
    else process.kill(-child.pid!, name);
  } catch {
    // It has ended meanwhile.
  }
}

function lastLine(text: string): string {
  return text.trim().split('\n').at(-1) ?? '';
}
