import { open } from 'node:fs/promises';
import { badUse } from './failure.ts';

/**
 * A file's text, at most `limit` bytes of it read. Fails with a plain sentence when it is missing, too large or not UTF-8.
 * The size is found by reading, because a pipe or a device says that it has none.
 */
export async function readText(path: string, limit: number): Promise<string> {
  const bytes = await readBytes(path, limit + 1);
  if (bytes.length > limit) {
    throw badUse(`cannot read ${path}: it is larger than ${limit / 1e6} MB, more than any playbook needs.`);
  }
  try {
    // Fatal, so that a picture or an archive is not taken for a badly written playbook.
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw badUse(`cannot read ${path}: it is not a text file in UTF-8. Save it as plain text in UTF-8.`);
  }
}

async function readBytes(path: string, most: number): Promise<Uint8Array> {
  try {
    const file = await open(path, 'r');
    try {
      const bytes = new Uint8Array(most);
      let length = 0;
      while (length < most) {
        const { bytesRead } = await file.read(bytes, length, most - length);
        if (bytesRead === 0) break;
        length += bytesRead;
      }
      return bytes.subarray(0, length);
    } finally {
      await file.close();
    }
  } catch (error) {
    throw badUse(`cannot read ${path}: ${reason(error)}.`);
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file; check the name and the folder',
  EACCES: 'you have no right to read it',
  EPERM: 'you have no right to read it',
  EISDIR: 'it is a folder; name the playbook file in it',
  ENOTDIR: 'a part of the path is a file',
};

function reason(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return reasons[code] ?? (error instanceof Error ? error.message : String(error));
}
