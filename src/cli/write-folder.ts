import { randomUUID } from 'node:crypto';
import { mkdir, readdir, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { badUse } from './failure.ts';

/**
 * Makes a folder with all of these files or does not make it at all: it is filled under another name and then renamed.
 * Fails with a plain sentence when the folder is there and holds anything.
 */
export async function writeNewFolder(
  path: string,
  files: readonly { readonly name: string; readonly content: string }[],
): Promise<void> {
  const present = await entries(path);
  if (present !== undefined && present > 0) {
    throw badUse(`${path} is already there and is not empty. Name another folder, or empty it first.`);
  }
  const draft = join(dirname(path), `.${randomUUID()}.tmp`);
  try {
    await mkdir(draft, { recursive: true });
    for (const file of files) await writeFile(join(draft, file.name), file.content, { flag: 'wx' });
    if (present === 0) await rmdir(path);
    await rename(draft, path);
  } catch (error) {
    await rm(draft, { recursive: true, force: true }).catch(() => undefined);
    throw badUse(`cannot write ${path}: ${error instanceof Error ? error.message : String(error)}.`);
  }
}

async function entries(path: string): Promise<number | undefined> {
  try {
    return (await readdir(path)).length;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined;
    throw badUse(`cannot write ${path}: it is there and is no folder that can be read.`);
  }
}
