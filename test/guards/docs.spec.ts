import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { findPageFaults } from '../../scripts/check-docs.ts';

const known = { scripts: new Set(['check']), commands: new Set(['demo']) };
const badPage = 'test/guards/bad/docs/every-fault.md';

test('every kind of fault is found', async () => {
  const faults = await findPageFaults(badPage, known);
  expect(faults.map((fault) => fault.slice(badPage.length + 2).split('\n')[0])).toEqual([
    'broken link: missing.md',
    'broken anchor: #no-such-heading',
    'unknown npm script: no-such-script',
    'unknown sliderule command: no-such-command',
    expect.stringContaining('invalid playbook: '),
    'prints something else: console.log(1 + 1);',
    "code fails: throw new Error('thrown by the page');",
  ]);
});

test('a page without fault passes', async () => {
  expect(await findPageFaults('test/guards/bad/docs/no-fault.md', known)).toEqual([]);
});

test('a printed result is rewritten on request, and nothing else', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'sliderule-docs-'));
  const copy = join(folder, 'page.md');
  cpSync(badPage, copy);
  await findPageFaults(copy, known, true);
  expect(readFileSync(copy, 'utf8')).toBe(readFileSync(badPage, 'utf8').replace('```text\n3\n', '```text\n2\n'));
  rmSync(folder, { recursive: true });
});
