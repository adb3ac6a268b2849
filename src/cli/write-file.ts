import { randomUUID } from 'node:crypto';
import { constants, existsSync } from 'node:fs';
import { copyFile, link, mkdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { badUse } from './failure.ts';

/**
 * Writes a new file whole or not at all: under another name first, then put into place. Makes the folders that are missing.
 * Fails with a plain sentence when it cannot, and when the file is already there, which then stays as it is.
 */
export async function writeNew(path: string, content: string | Uint8Array): Promise<void> {
  checkNew(path);
  const draft = join(dirname(path), `.${randomUUID()}.tmp`);
  try {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(draft, content, { flag: 'wx' });
    await placeNew(draft, path);
  } catch (error) {
    if (codeOf(error) === 'EEXIST' && existsSync(path)) throw alreadyThere(path);
    throw badUse(`cannot write ${path}: ${reason(error)}.`);
  } finally {
    await rm(draft, { force: true }).catch(() => undefined);
  }
}

/** Fails when the file is already there: to be asked before work that takes long. */
export function checkNew(path: string): void {
  if (existsSync(path)) throw alreadyThere(path);
}

// A hard link fails when the name is taken meanwhile; a rename would replace it without a word. Memory sticks know no
// links: there a copy that fails in the same case has to do.
async function placeNew(draft: string, path: string): Promise<void> {
  try {
    await link(draft, path);
  } catch (error) {
    if (codeOf(error) === 'EEXIST') throw error;
    await copyFile(draft, path, constants.COPYFILE_EXCL);
  }
}

function alreadyThere(path: string): Error {
  return badUse(`${path} is already there and is left as it is. Name another place, or move it away first.`);
}

const reasons: Readonly<Record<string, string>> = {
  EACCES: 'you have no right to write there',
  EPERM: 'you have no right to write there',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  ENOTDIR: 'a part of the path is a file',
  EEXIST: 'a part of the path is a file',
  EISDIR: 'it is a folder',
};

function reason(error: unknown): string {
  return reasons[codeOf(error)] ?? (error instanceof Error ? error.message : String(error));
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : '';
}
