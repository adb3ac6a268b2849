import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type IncomingHttpHeaders, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type AppFiles, readAppFiles } from './app-files.ts';
import { type Served, serveApp } from './serve-app.ts';

const content_byPath = {
  'index.html': '<!doctype html><title>Sliderule</title>',
  'sw.js': 'self.skipWaiting',
  'manifest.webmanifest': '{}',
  'icon.svg': '<svg/>',
  'assets/main-1a2b3c4d.js': 'export {}',
  'assets/main-1a2b3c4d.css': 'body{}',
  'assets/inter-1a2b3c4d.woff2': 'wOF2',
  'assets/engine-1a2b3c4d.wasm': '\0asm',
  '.vite/manifest.json': '{"secret":1}',
};

let folder = '';
let served: Extract<Served, { kind: 'serving' }>;
let files: AppFiles;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'sliderule-app-'));
  mkdirSync(join(folder, 'app/assets'), { recursive: true });
  mkdirSync(join(folder, 'app/.vite'));
  for (const [path, content] of Object.entries(content_byPath)) writeFileSync(join(folder, 'app', path), content);
  writeFileSync(join(folder, 'private.txt'), 'not part of the build');
  files = readAppFiles(pathToFileURL(`${folder}/app/`))!;
  served = await start(files);
});
afterAll(async () => {
  await served.close();
  rmSync(folder, { recursive: true, force: true });
});

async function start(those: AppFiles, port = 0) {
  const result = await serveApp(those, port);
  if (result.kind !== 'serving') throw new TypeError(`not serving: ${JSON.stringify(result)}`);
  return result;
}

interface Answer {
  readonly status: number | undefined;
  readonly headers: IncomingHttpHeaders;
  readonly body: string;
}

/** Asks with the path as it is written here: fetch would tidy `..` away before the server sees it. */
function ask(path: string, headers: Record<string, string> = {}, method = 'GET'): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port: served.port, path, headers, method, agent: false }, (response) => {
      let body = '';
      response.on('data', (part) => {
        body += part;
      });
      response.on('end', () => resolve({ status: response.statusCode, headers: response.headers, body }));
    });
    asked.on('error', reject);
    asked.end();
  });
}

describe('what is sent', () => {
  it.each([
    ['/', 'text/html; charset=utf-8', 'no-cache'],
    ['/index.html', 'text/html; charset=utf-8', 'no-cache'],
    ['/index.html?__WB_REVISION__=1', 'text/html; charset=utf-8', 'no-cache'],
    ['/sw.js', 'text/javascript; charset=utf-8', 'no-cache'],
    ['/manifest.webmanifest', 'application/manifest+json; charset=utf-8', 'no-cache'],
    ['/icon.svg', 'image/svg+xml; charset=utf-8', 'no-cache'],
    ['/assets/main-1a2b3c4d.js', 'text/javascript; charset=utf-8', 'public, max-age=31536000, immutable'],
    ['/assets/main-1a2b3c4d.css', 'text/css; charset=utf-8', 'public, max-age=31536000, immutable'],
    ['/assets/inter-1a2b3c4d.woff2', 'font/woff2', 'public, max-age=31536000, immutable'],
    ['/assets/engine-1a2b3c4d.wasm', 'application/wasm', 'public, max-age=31536000, immutable'],
  ])('%s as %s, kept %s', async (path, type, kept) => {
    const { status, headers, body } = await ask(path);
    expect([status, headers['content-type'], headers['cache-control']]).toEqual([200, type, kept]);
    const name = path === '/' ? 'index.html' : path.slice(1).split('?')[0];
    expect(body).toBe(content_byPath[name as keyof typeof content_byPath]);
  });

  it.each([['/'], ['/sw.js'], ['/assets/main-1a2b3c4d.js'], ['/nothing']])('%s isolates the page', async (path) => {
    const { headers } = await ask(path);
    expect(headers).toMatchObject({
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-embedder-policy': 'require-corp',
      'x-content-type-options': 'nosniff',
    });
    // Nothing from elsewhere, and no text becomes a program.
    expect(headers['content-security-policy']).toMatch(/default-src 'none'; script-src 'self';/);
    expect(headers['content-security-policy']).not.toMatch(/unsafe-eval|https?:|\*/);
  });

  it('sends nothing twice to a browser that has it', async () => {
    const { headers } = await ask('/');
    const again = await ask('/', { 'If-None-Match': headers.etag ?? '' });
    expect([again.status, again.body, again.headers.etag]).toEqual([304, '', headers.etag]);
    expect((await ask('/', { 'If-None-Match': '"older"' })).status).toBe(200);
  });

  it('answers HEAD without a body and refuses to be written to', async () => {
    const head = await ask('/', {}, 'HEAD');
    expect([head.status, head.body, head.headers['content-length']]).toEqual([200, '', '39']);
    for (const method of ['POST', 'PUT', 'DELETE']) {
      const { status, headers } = await ask('/', {}, method);
      expect([status, headers.allow]).toEqual([405, 'GET, HEAD']);
    }
  });
});

it.each([
  ['/../private.txt', 404],
  ['/assets/../../private.txt', 404],
  ['/..%2fprivate.txt', 404],
  ['/%2e%2e/private.txt', 404],
  ['/assets/..%5c..%5cprivate.txt', 404],
  ['//private.txt', 404],
  ['/.vite/manifest.json', 404],
  ['/private.txt%00.html', 404],
  ['/%ff', 400],
  ['/__proto__', 404],
])('no path leads out of the build: %s', async (path, expected) => {
  const { status, body } = await ask(path);
  expect(status).toBe(expected);
  expect(body).not.toMatch(/not part|secret/);
});

describe('a port that is taken', () => {
  it('leads to the next free one when another program has it', async () => {
    const other = createServer((_, response) => response.end('something else'));
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const { port } = other.address() as AddressInfo;
    const next = await start(files, port);
    expect(next.port).toBeGreaterThan(port);
    await next.close();
    other.close();
  });

  it('shows the Sliderule that has it, and says whether it is this build', async () => {
    const address = `http://127.0.0.1:${served.port}/`;
    expect(await serveApp(files, served.port)).toEqual({ kind: 'already', address, sameBuild: true });
    const later = { ...files, build: 'another' };
    expect(await serveApp(later, served.port)).toEqual({ kind: 'already', address, sameBuild: false });
  });

  it('does not wait for ever for a program that never answers', async () => {
    const silent = createServer(() => undefined);
    await new Promise<void>((resolve) => silent.listen(0, '127.0.0.1', resolve));
    const next = await start(files, (silent.address() as AddressInfo).port);
    await next.close();
    silent.closeAllConnections();
    silent.close();
  });
});

it('is the same build as long as no byte of it changed', () => {
  const again = readAppFiles(pathToFileURL(`${folder}/app/`));
  expect(again?.build).toBe(files.build);
  writeFileSync(join(folder, 'app/icon.svg'), '<svg></svg>');
  expect(readAppFiles(pathToFileURL(`${folder}/app/`))?.build).not.toBe(files.build);
});

it('is nothing where no build is', () => {
  expect(readAppFiles(pathToFileURL(`${folder}/elsewhere/`))).toBeUndefined();
  expect(readAppFiles(pathToFileURL(`${folder}/app/assets/`))).toBeUndefined();
});
