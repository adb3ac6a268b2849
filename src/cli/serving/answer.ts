import type { IncomingMessage, ServerResponse } from 'node:http';
import type { AppFile, AppFiles } from './app-files.ts';

/** Says of an answer that it comes from a Sliderule, and from which build. */
export const buildHeader = 'sliderule-build';

/**
 * The page may load from here and from nowhere else, and nothing that is typed or imported into it can become a program. Styles may stand
 * in the page, because the controls' library writes some there while a dialog is open. `blob:` and `data:` are pictures made on the spot; a film of the
 * coach's own is played from a `blob:` of his machine.
 */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  'media-src blob:',
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** Sent with everything. The first three make the page cross-origin isolated, without which threads cannot share memory. */
const everywhere: Readonly<Record<string, string>> = {
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Content-Security-Policy': contentSecurityPolicy,
  'Permissions-Policy': 'camera=(), geolocation=(), microphone=(), payment=(), usb=()',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
};

/**
 * Answers one request for a file of the workbench. Looks the path up among the files that were read at the start and touches no disk, so
 * that no path, however written, leads out of the build.
 */
export function answer(files: AppFiles, request: IncomingMessage, response: ServerResponse): void {
  for (const [name, value] of Object.entries(everywhere)) response.setHeader(name, value);
  response.setHeader(buildHeader, files.build);
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD');
    end(response, 405, 'This address only shows the workbench.\n');
    return;
  }
  const path = pathOf(request.url ?? '/');
  const file = path === undefined ? undefined : files.file_byPath.get(path === '/' ? '/index.html' : path);
  if (path === undefined) end(response, 400, 'This address cannot be read.\n');
  else if (file === undefined) end(response, 404, 'There is nothing at this address.\n');
  else send(file, request, response);
}

/** The path without query, undefined when it is not written as addresses are. */
function pathOf(url: string): string | undefined {
  try {
    return decodeURIComponent(url.split('?')[0] ?? '');
  } catch {
    return undefined;
  }
}

function send(file: AppFile, request: IncomingMessage, response: ServerResponse): void {
  // What may change under its name is asked for again each time, and costs an empty answer when it has not.
  response.setHeader('Cache-Control', file.hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
  response.setHeader('ETag', file.etag);
  if (request.headers['if-none-match'] === file.etag) {
    response.writeHead(304).end();
    return;
  }
  response.writeHead(200, { 'Content-Type': file.type, 'Content-Length': file.body.length });
  response.end(request.method === 'HEAD' ? undefined : file.body);
}

function end(response: ServerResponse, status: number, sentence: string): void {
  response.setHeader('Cache-Control', 'no-store');
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' }).end(sentence);
}
