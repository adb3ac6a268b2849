import { randomUUID } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { FilmOrder, FilmRefusal } from '../../press/index.ts';

/** What comes back from the browser that makes a film. */
export type FilmNews =
  /** It is there and has taken the order. */
  | { readonly kind: 'begun' }
  /** So much of it is done, 0 to 1. */
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'film'; readonly bytes: Uint8Array }
  | { readonly kind: 'refused'; readonly refusal: FilmRefusal };

/** What the page is made of. */
export interface FilmDeskParts {
  readonly order: FilmOrder;
  /** The built program of the page. */
  readonly program: string;
  readonly letters: Readonly<Record<'regular' | 'bold', Uint8Array>>;
}

/** Where a browser fetches what it is to film and brings the film back. */
export interface FilmDesk {
  /** The page to open. Nobody else can guess it. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

const host = '127.0.0.1';
/** Bytes that are taken at most: an hour of film; whoever sends more is no film of ours. */
const mostBytes = 2_000_000_000;

/** Serves the page of one film on this machine alone, at an address with a long random word, and tells what comes back. */
export async function openFilmDesk(parts: FilmDeskParts, tell: (news: FilmNews) => void): Promise<FilmDesk> {
  const word = `/${randomUUID()}/`;
  const server = createServer((request, response) => {
    answer(parts, word, request, response, tell).catch(() => response.destroy());
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, host, resolve);
  });
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://${host}:${port}${word}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

async function answer(
  parts: FilmDeskParts,
  word: string,
  request: IncomingMessage,
  response: ServerResponse,
  tell: (news: FilmNews) => void,
): Promise<void> {
  const url = request.url ?? '';
  const name = url.startsWith(word) ? url.slice(word.length) : undefined;
  if (name !== undefined && request.method === 'GET' && send(parts, name, response)) {
    if (name === 'order') tell({ kind: 'begun' });
    return;
  }
  if (name !== undefined && request.method === 'POST') {
    const news = newsOf(name, await bodyOf(request));
    response.writeHead(news === undefined ? 404 : 204).end();
    if (news !== undefined) tell(news);
    return;
  }
  response.writeHead(404).end();
}

function send({ order, program, letters }: FilmDeskParts, name: string, response: ServerResponse): boolean {
  const [type, body] = contentOf(name);
  if (type === undefined) return false;
  response.writeHead(200, { 'Content-Type': type, 'Cache-Control': 'no-store' }).end(body);
  return true;

  function contentOf(asked: string): readonly [string, string | Uint8Array] | readonly [undefined, undefined] {
    switch (asked) {
      case '':
        return ['text/html; charset=utf-8', '<!doctype html><title>A film</title><script src="program"></script>'];
      case 'program':
        return ['text/javascript; charset=utf-8', program];
      case 'order':
        return ['application/json; charset=utf-8', JSON.stringify(order)];
      case 'regular':
      case 'bold':
        return ['font/ttf', letters[asked]];
      default:
        return [undefined, undefined];
    }
  }
}

function newsOf(name: string, body: Uint8Array): FilmNews | undefined {
  switch (name) {
    case 'progress':
      return { kind: 'progress', share: Number(new TextDecoder().decode(body)) || 0 };
    case 'film':
      return { kind: 'film', bytes: body };
    case 'refused':
      return { kind: 'refused', refusal: JSON.parse(new TextDecoder().decode(body)) as FilmRefusal };
    default:
      return undefined;
  }
}

async function bodyOf(request: IncomingMessage): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of request as AsyncIterable<Uint8Array>) {
    length += part.length;
    if (length > mostBytes) throw new RangeError('a film of more bytes than an hour has');
    parts.push(part);
  }
  return new Uint8Array(Buffer.concat(parts));
}
