import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { extname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** One file of the built workbench, ready to be sent. */
export interface AppFile {
  readonly body: Buffer;
  readonly type: string;
  readonly etag: string;
  /** The name carries a hash of the content: what was sent under it once is right for ever. */
  readonly hashed: boolean;
}

/** The built workbench in memory: a rebuild beside a running server changes nothing half way. */
export interface AppFiles {
  /** By the path in an address, such as "/assets/main-1a2b3c4d.js". */
  readonly file_byPath: ReadonlyMap<string, AppFile>;
  /** Equal for equal builds. */
  readonly build: string;
}

const type_byExtension: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
};

/**
 * Reads every file of the built workbench. Undefined when there is no build in this folder. Files whose names begin with a dot are the
 * build's own notes and are left out.
 */
export function readAppFiles(folder: URL): AppFiles | undefined {
  const root = fileURLToPath(folder);
  const file_byPath = new Map<string, AppFile>();
  for (const path of filesIn(root)) file_byPath.set(`/${path.replaceAll(sep, '/')}`, readAppFile(root, path));
  if (!file_byPath.has('/index.html')) return undefined;
  const all = [...file_byPath].map(([path, file]) => `${path} ${file.etag}\n`).sort();
  return { file_byPath, build: shortHash(all.join('')) };
}

function filesIn(root: string): readonly string[] {
  try {
    return readdirSync(root, { recursive: true, encoding: 'utf8' })
      .filter((path) => !path.split(sep).some((part) => part.startsWith('.')))
      .filter((path) => statSync(join(root, path)).isFile());
  } catch {
    return [];
  }
}

function readAppFile(root: string, path: string): AppFile {
  const body = readFileSync(join(root, path));
  return {
    body,
    type: type_byExtension[extname(path).toLowerCase()] ?? 'application/octet-stream',
    etag: `"${shortHash(body)}"`,
    // The build puts there what it names by content, and nothing else.
    hashed: path.startsWith(`assets${sep}`),
  };
}

function shortHash(content: string | Buffer): string {
  return createHash('sha256').update(content).digest('base64url').slice(0, 22);
}
