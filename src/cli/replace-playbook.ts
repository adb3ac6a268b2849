import { randomUUID } from 'node:crypto';
import { readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { type Playbook, serializePlaybook } from '../playbook/index.ts';
import { badUse } from './failure.ts';
import type { OpenPlaybook } from './open-playbook.ts';

/**
 * Writes a changed playbook into its file, whole or not at all: under another name first, then in its place. Fails with a plain sentence when it cannot, and when the file is no
 * longer what was read: somebody else's work is never written over.
 */
export async function replacePlaybook(path: string, { document }: OpenPlaybook, playbook: Playbook): Promise<void> {
  const draft = join(dirname(path), `.${randomUUID()}.tmp`);
  try {
    const { mode } = await stat(path);
    await writeFile(draft, serializePlaybook(playbook), { flag: 'wx', mode });
    if ((await readFile(path, 'utf8')) !== document)
      throw badUse(`${path} was changed meanwhile and is left as it is. Try again.`);
    await rename(draft, path);
  } catch (error) {
    if (error instanceof Error && error.name === 'Failure') throw error;
    throw badUse(`cannot write ${path}: ${error instanceof Error ? error.message : String(error)}.`);
  } finally {
    await rm(draft, { force: true }).catch(() => undefined);
  }
}
