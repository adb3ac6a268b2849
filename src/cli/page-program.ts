import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { badUse } from './failure.ts';
import type { Io } from './io.ts';

/** The program of a page, built beside the worker. Fails with a plain sentence where it is not. */
export function pageProgram({ worker }: Io, name: string): string {
  const path = new URL(`./${name}`, worker);
  if (!existsSync(path)) throw badUse('the program of the page is not built here. Build it first: npm run build.');
  return readFileSync(path, 'utf8');
}

/** SHA-256 in base64. */
export async function hashOf(text: string): Promise<string> {
  return createHash('sha256').update(text).digest('base64');
}
