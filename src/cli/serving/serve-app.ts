import { createServer, request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { answer, buildHeader } from './answer.ts';
import type { AppFiles } from './app-files.ts';

/** Nobody outside this machine can reach it. */
const host = '127.0.0.1';

/** How many ports are tried from the wished one on. */
const portsTried = 20;

/** Milliseconds in which another program on a port must say what it is. */
const patience = 1000;

/** What came of the wish to serve. */
export type Served =
  | { readonly kind: 'serving'; readonly address: string; readonly port: number; readonly close: () => Promise<void> }
  /** A Sliderule is there already, of the same build or of another. */
  | { readonly kind: 'already'; readonly address: string; readonly sameBuild: boolean }
  | { readonly kind: 'refused'; readonly reason: string };

/**
 * Serves the workbench at a port, 0 for any, or at the next free one when another program has it. Where a Sliderule answers already,
 * nothing new is started: a browser keeps what is typed by address, and behind another port a playbook would seem to be gone.
 */
export async function serveApp(files: AppFiles, wished: number): Promise<Served> {
  const server = createServer((message, response) => answer(files, message, response));
  const last = wished === 0 ? 0 : Math.min(wished + portsTried - 1, 65_535);
  for (let port = wished; port <= last; port++) {
    const trouble = await listen(server, port);
    if (trouble === undefined) return serving(server);
    if (trouble !== 'EADDRINUSE') return { kind: 'refused', reason: `port ${port} cannot be used: ${trouble}` };
    const build = await buildAt(port);
    if (build !== undefined) return { kind: 'already', address: addressOf(port), sameBuild: build === files.build };
  }
  return { kind: 'refused', reason: `the ports ${wished} to ${last} are all taken` };
}

/** The address of a port on this machine. */
export function addressOf(port: number): string {
  return `http://${host}:${port}/`;
}

/** Undefined when it listens, else the system's code of what is in the way. */
function listen(server: Server, port: number): Promise<string | undefined> {
  return new Promise((resolve) => {
    const failed = (error: NodeJS.ErrnoException) => resolve(error.code ?? error.message);
    server.once('error', failed);
    server.listen(port, host, () => {
      server.off('error', failed);
      resolve(undefined);
    });
  });
}

function serving(server: Server): Served {
  const { port } = server.address() as AddressInfo;
  return { kind: 'serving', address: addressOf(port), port, close: () => close(server) };
}

function close(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    // A browser keeps its connections open for the next request, which will not be answered any more.
    server.closeAllConnections();
  });
}

/** The build of the Sliderule at a port, undefined when something else has it. */
function buildAt(port: number): Promise<string | undefined> {
  return new Promise((resolve) => {
    const asked = request({ host, port, method: 'HEAD', path: '/', timeout: patience, agent: false }, (response) => {
      response.resume();
      const build = response.headers[buildHeader];
      resolve(typeof build === 'string' ? build : undefined);
    });
    asked.on('timeout', () => asked.destroy());
    asked.on('error', () => resolve(undefined));
    asked.on('close', () => resolve(undefined));
    asked.end();
  });
}
