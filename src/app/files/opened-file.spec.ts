import { describe, expect, test } from 'vitest';
import { demoPlaybook, demoText, limits, parseUnfinished } from '../../playbook/index.ts';
import { emptyPlaybook } from './empty-playbook.ts';
import { openFile, type ReadableFile } from './opened-file.ts';

const file = (text: string) => ({ name: 'a.json', size: text.length, text: async () => text });

const open = (chosen: ReadableFile) => openFile(chosen, async (text) => parseUnfinished(text));

describe('a file that is opened', () => {
  test('is good when it has no errors', async () => {
    expect(await open(file(demoText))).toMatchObject({ kind: 'good', name: 'a.json', playbook: demoPlaybook });
  });

  test('is unfinished when every part is there, and says what is wrong and where', async () => {
    const opened = await open(file(demoText.replace('C cut to -2,6', 'C cut to')));
    expect(opened.kind).toBe('unfinished');
    const [problem] = opened.problems.filter(({ severity }) => severity === 'error');
    expect(problem?.line).toBeGreaterThan(1);
    expect(problem?.column).toBeGreaterThan(1);
  });

  test('an empty playbook that was begun here can be opened again', async () => {
    const text = JSON.stringify(emptyPlaybook('Hill', '12U'));
    expect(await open(file(text))).toMatchObject({ kind: 'unfinished', playbook: emptyPlaybook('Hill', '12U') });
  });

  test.each([
    ['cut off', demoText.slice(0, 1000)],
    ['empty', ''],
    ['a picture', '\u0089PNG\r\n\u001a\n'],
    ['a list', '[1, 2]'],
    ['with a forbidden name', '{"__proto__": {"polluted": true}}'],
  ])('is broken when it is %s, with at least one sentence', async (_, text) => {
    const opened = await open(file(text));
    expect(opened.kind).toBe('broken');
    expect(opened.problems[0]!.message).toMatch(/\.$/);
  });

  test('is not read at all when it is too large', async () => {
    const film = { name: 'film.mp4', size: limits.bytes + 1, text: () => Promise.reject(new Error('was read')) };
    expect((await open(film)).problems[0]!.message).toMatch(/larger than 5 MB/);
  });

  test('says so when the device does not let it be read', async () => {
    const folder = { name: 'folder', size: 0, text: () => Promise.reject(new Error('NotReadableError')) };
    expect((await open(folder)).problems[0]!.message).toMatch(/choose it again/);
  });
});
