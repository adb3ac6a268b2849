import { type BrowserServer, chromium } from 'playwright-core';
import { findChromium } from './find-chromium.ts';

/**
 * What the browser is started with, whichever it is. Without a sandbox, because root has none and what it opens is our own page; without
 * anything that asks the network by itself.
 */
const switches = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--no-first-run',
  '--font-render-hinting=none',
];

/** Milliseconds in which a browser starts even on a busy machine, and ends. */
const startPatience = 60_000;
const endPatience = 10_000;

/** A running browser that several processes can use by its endpoint. */
export interface LaunchedBrowser {
  readonly endpoint: string;
  /** Where it comes from, in words for the log. */
  readonly origin: string;
  /** Ends it; by its process's number when it does not end when it is asked to. */
  readonly close: () => Promise<void>;
}

/** Starts the browser that `findChromium` finds. `more` are further switches, such as a bench's. */
export async function launchBrowser(more: readonly string[] = []): Promise<LaunchedBrowser> {
  const { executable, environment, origin } = findChromium();
  const server = await chromium.launchServer({
    executablePath: executable,
    env: environment,
    args: [...switches, ...more],
    headless: true,
    timeout: startPatience,
  });
  return { endpoint: server.wsEndpoint(), origin, close: () => close(server) };
}

async function close(server: BrowserServer): Promise<void> {
  const { pid } = server.process();
  const late = setTimeout(() => pid !== undefined && process.kill(pid, 'SIGKILL'), endPatience);
  await server.close();
  clearTimeout(late);
}
