import { existsSync, readFileSync } from 'node:fs';
import type { FilmOrder } from '../../press/index.ts';
import { badUse, exitCodes, Failure } from '../failure.ts';
import type { Io } from '../io.ts';
import { readPageFonts } from '../press/page-fonts.ts';
import { type FilmNews, openFilmDesk } from './film-desk.ts';
import { browserVariable, type FoundBrowser, findBrowser, findCheckoutBrowser } from './find-browser.ts';
import { type RunningBrowser, runBrowser } from './run-browser.ts';

/** Milliseconds in which a browser must have begun, also on a slow disk, and then at least must tell how far it is. */
const patience = 90_000;

/**
 * A film as a video, made by a browser of this machine: nothing else here has an encoder. The browser runs unseen with a profile of its own, is ended and its
 * profile removed whatever happens. Fails with a plain sentence when there is none, or when it cannot.
 */
export async function filmByBrowser(
  io: Io,
  order: FilmOrder,
  onProgress: (share: number) => void,
): Promise<Uint8Array> {
  const browser = findBrowser() ?? findCheckoutBrowser(io.worker);
  if (browser === undefined) throw noBrowser();
  const parts = { order, program: pageProgram(io), letters: readPageFonts() };
  const inbox = createInbox();
  const desk = await openFilmDesk(parts, inbox.tell);
  let running: RunningBrowser | undefined;
  try {
    io.signal.throwIfAborted();
    running = await runBrowser(browser, desk.address);
    return await awaitFilm(io, inbox, running, browser, order, onProgress);
  } finally {
    await running?.close();
    await desk.close();
  }
}

async function awaitFilm(
  io: Io,
  inbox: Inbox,
  running: RunningBrowser,
  browser: FoundBrowser,
  { kind }: FilmOrder,
  onProgress: (share: number) => void,
): Promise<Uint8Array> {
  // One promise for all turns: a signal warns of a listener for each.
  const ended = running.ended.then((said) => ({ kind: 'ended', said }) as const);
  const stop = stopped(io.signal);
  while (true) {
    const news = await Promise.race([inbox.next(), ended, stop, late()]);
    switch (news.kind) {
      case 'begun':
        break;
      case 'progress':
        onProgress(news.share);
        break;
      case 'film':
        return news.bytes;
      case 'refused':
        throw news.refusal.kind === 'noEncoder' ? noEncoder(browser, kind) : brokeOff(browser, news.refusal.reason);
      case 'ended':
        throw brokeOff(browser, news.said || 'it ended by itself');
      case 'late':
        throw brokeOff(browser, `nothing came from it for ${patience / 1000} s`);
      case 'stopped':
        throw new Failure('Stopped.', exitCodes.interrupted);
      default:
        return exhaustive(news);
    }
  }
}

/** News in the order in which they came, kept until they are asked for. */
interface Inbox {
  readonly tell: (news: FilmNews) => void;
  readonly next: () => Promise<FilmNews>;
}

function createInbox(): Inbox {
  const come: FilmNews[] = [];
  let wake: () => void = () => undefined;
  return {
    tell: (news) => {
      come.push(news);
      wake();
    },
    next: async () => {
      while (come.length === 0) {
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      }
      return come.shift()!;
    },
  };
}

function stopped(signal: AbortSignal): Promise<{ readonly kind: 'stopped' }> {
  return new Promise((resolve) => {
    if (signal.aborted) resolve({ kind: 'stopped' });
    signal.addEventListener('abort', () => resolve({ kind: 'stopped' }), { once: true });
  });
}

function late(): Promise<{ readonly kind: 'late' }> {
  return new Promise((resolve) => {
    // Holds nothing up: what it waits for is the browser, whose process does.
    setTimeout(() => resolve({ kind: 'late' }), patience).unref();
  });
}

/** The program of the page, built beside the worker. */
function pageProgram({ worker }: Io): string {
  const path = new URL('./film-page.js', worker);
  if (!existsSync(path)) throw badUse('the program that films is not built here. Build it first: npm run build.');
  return readFileSync(path, 'utf8');
}

const withoutBrowser = 'Without one: --out with a name that ends in .gif (a film) or .html (a page for phones).';

function noBrowser(): Failure {
  const named = process.env[browserVariable];
  if (named) return badUse(`${browserVariable} names no program: ${named}. ${withoutBrowser}`);
  return badUse(
    `a video is made by a browser, and none was found here: install Chromium, Chrome or Edge, or say where one is: ${browserVariable}=/path/to/it. ${withoutBrowser}`,
  );
}

function noEncoder({ executable }: FoundBrowser, kind: FilmOrder['kind']): Failure {
  const other = kind === 'mp4' ? '.webm' : '.mp4';
  return badUse(
    `the browser at ${executable} cannot make a .${kind}. Name a file that ends in ${other}, or another browser: ${browserVariable}=/path/to/it. ${withoutBrowser}`,
  );
}

function brokeOff({ executable }: FoundBrowser, reason: string): Failure {
  return badUse(
    `the browser at ${executable} did not bring a film: ${reason}. Try another: ${browserVariable}=/path/to/it. ${withoutBrowser}`,
  );
}

function exhaustive(news: never): never {
  throw new TypeError(`unknown news: ${JSON.stringify(news)}`);
}
