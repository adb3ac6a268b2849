import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { Failure } from './failure.ts';
import { readText } from './read-file.ts';
import { writeNew } from './write-file.ts';
import { writeNewFolder } from './write-folder.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sliderule-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('readText', () => {
  it('reads a text', async () => {
    writeFileSync(join(folder, 'a'), 'naïve');
    expect(await readText(join(folder, 'a'), 100)).toBe('naïve');
  });

  it.each([
    ['missing', 'there is no such file'],
    ['.', 'it is a folder'],
    ['latin', 'not a text file in UTF-8'],
    ['large', 'larger than'],
    ['latin/inside', 'a part of the path is a file'],
  ])('says in a sentence why %s cannot be read', async (name, reason) => {
    writeFileSync(join(folder, 'latin'), Buffer.from([0x6e, 0xef, 0x76]));
    writeFileSync(join(folder, 'large'), 'x'.repeat(101));
    await expect(readText(join(folder, name), 100)).rejects.toThrow(reason);
    await expect(readText(join(folder, name), 100)).rejects.toBeInstanceOf(Failure);
  });

  it('reads up to the limit and not a byte more', async () => {
    writeFileSync(join(folder, 'full'), 'x'.repeat(100));
    expect(await readText(join(folder, 'full'), 100)).toHaveLength(100);
  });

  it('ends on a source that never does', async () => {
    await expect(readText('/dev/zero', 1000)).rejects.toThrow('larger than');
  });
});

describe('writing', () => {
  it('makes the folders that are missing and leaves nothing else behind', async () => {
    await writeNew(join(folder, 'a', 'b', 'file.json'), 'text');
    expect(readFileSync(join(folder, 'a', 'b', 'file.json'), 'utf8')).toBe('text');
    expect(readdirSync(join(folder, 'a', 'b'))).toEqual(['file.json']);
  });

  it('never replaces a file that should be new', async () => {
    writeFileSync(join(folder, 'mine'), 'old');
    await expect(writeNew(join(folder, 'mine'), 'new')).rejects.toThrow('already there');
    expect(readFileSync(join(folder, 'mine'), 'utf8')).toBe('old');
    expect(readdirSync(folder)).toEqual(['mine']);
  });

  it('says in a sentence why it cannot write', async () => {
    writeFileSync(join(folder, 'file'), '');
    await expect(writeNew(join(folder, 'file', 'inside'), 'x')).rejects.toThrow('cannot write');
  });
});

describe('writeNewFolder', () => {
  const files = [
    { name: '1.svg', content: 'one' },
    { name: '2.svg', content: 'two' },
  ];

  it.each([
    ['a new place', (): void => undefined],
    ['an empty folder', (): void => mkdirSync(join(folder, 'pictures'))],
  ])('fills %s', async (_, prepare) => {
    prepare();
    await writeNewFolder(join(folder, 'pictures'), files);
    expect(readdirSync(join(folder, 'pictures'))).toEqual(['1.svg', '2.svg']);
    expect(readdirSync(folder)).toEqual(['pictures']);
  });

  it('leaves a folder alone that holds anything', async () => {
    mkdirSync(join(folder, 'pictures'));
    writeFileSync(join(folder, 'pictures', 'holiday.jpg'), '');
    await expect(writeNewFolder(join(folder, 'pictures'), files)).rejects.toThrow('is not empty');
    expect(readdirSync(join(folder, 'pictures'))).toEqual(['holiday.jpg']);
  });

  it('leaves nothing behind when a file cannot be written', async () => {
    const twice = [files[0]!, files[0]!];
    await expect(writeNewFolder(join(folder, 'pictures'), twice)).rejects.toThrow('cannot write');
    expect(readdirSync(folder)).toEqual([]);
  });
});
