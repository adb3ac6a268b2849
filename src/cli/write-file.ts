import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import { link, mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { badUse } from './failure.ts';

/**
 * Writes a file whole or not at all: under another name first, then renamed into place.
 * Makes the folders that are missing. Fails with a plain sentence when it cannot.
 */
export async function writeWhole(path: string, content: string): Promise<void> {
  await placeDraft(path, content, async (draft) => rename(draft, path));
}

/** The same for a file that must not be there yet: fails, and leaves the old one alone, when it is. */
export async function writeNew(path: string, content: string): Promise<void> {
  if (existsSync(path)) throw alreadyThere(path);
  await placeDraft(path, content, async (draft) => {
    // A hard link fails when the name is taken meanwhile; a rename would replace it without a word.
    await link(draft, path);
    await rm(draft);
  });
}

async function placeDraft(path: string, content: string, place: (draft: string) => Promise<void>): Promise<void> {
  const draft = join(dirname(path), `.${randomUUID()}.tmp`);
  try {
    await mkdir(dirname(path), { recursive: true });
    await writeFile(draft, content, { flag: 'wx' });
    await place(draft);
  } catch (error) {
    await rm(draft, { force: true }).catch(() => undefined);
    if (isCode(error, 'EEXIST') && existsSync(path)) throw alreadyThere(path);
    throw badUse(`cannot write ${path}: ${reason(error)}.`);
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
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return reasons[code] ?? (error instanceof Error ? error.message : String(error));
}

function isCode(error: unknown, code: string): boolean {
  return error instanceof Error && 'code' in error && error.code === code;
}
