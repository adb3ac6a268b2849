import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demoText, parsePlaybook } from '../../playbook/index.ts';
import { runRecorded } from '../recorded-io.fixture.ts';
import { tableWidth } from '../table.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'practice-'));
  writeFileSync(join(folder, 'demo.json'), demoText);
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

async function practice(...words: readonly string[]) {
  const ran = await runRecorded(['practice', join(folder, 'demo.json'), ...words]);
  return { ...ran, err: ran.err.replace(/\s+/g, ' ') };
}

const quick = ['--play', 'quarry', '--against', 'five-man-rotation', '--no-reads', '--trials', '60', '--players', '14'];

describe('practice', () => {
  it('prints a plan with its clock, what the looks carry, and the cautions', async () => {
    const { code, out } = await practice(...quick);
    expect(code).toBe(0);
    expect(out).toMatch(/^ +0:00 +Talk at the board +1½? min/m);
    expect(out).toMatch(/^ *\d+:\d\d +Live 6 v 5/m);
    expect(out).toMatch(/feed WL to CR +0\.\d\d \(0\.\d\d-0\.\d\d\)/);
    expect(out).toContain('Cautions\nShooting: only a fully equipped goalkeeper');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(tableWidth);
  });

  it.each([
    ['pdf', '%PDF-', /\d pages of Letter/],
    ['svg', '<svg ', /one page of Letter/],
    ['png', '\u0089PNG', /one page of Letter/],
  ])('puts it on paper (%s)', async (ending, begins, said) => {
    const path = join(folder, `plan.${ending}`);
    const { code, out } = await practice(...quick, '--out', path, '--day', '2026-03-10');
    expect(code).toBe(0);
    expect(out).toMatch(said);
    expect(readFileSync(path, 'latin1').slice(0, begins.length)).toBe(begins);
  });

  it('gives a plan that a playbook can hold, as JSON', async () => {
    const { out } = await practice(...quick, '--json', '--no-keeper', '--minutes', '30');
    const { practice: plan } = JSON.parse(out);
    expect(plan).toMatchObject({ minutes: 30, players: 14, keeper: false, plays: ['quarry'] });
    const playbook = { ...JSON.parse(demoText), practices: [{ ...plan, id: 'tuesday' }] };
    const { value, diagnostics } = parsePlaybook(JSON.stringify(playbook));
    expect(value).toBeDefined();
    expect(diagnostics.filter(({ path }) => path.startsWith('practices'))).toEqual([]);
  });

  it('says at 10U that no team is ever a man up in games', async () => {
    const path = join(folder, 'plan.svg');
    const { out, err } = await practice(...quick, '--level', '10U', '--out', path);
    expect(err).toContain('Note:');
    expect(out).toContain('10U games: no team is ever a man up or down');
    expect(readFileSync(path, 'utf8')).toContain('no body checks at 10U');
  });

  it.each([
    [['--minutes', '3'], 'invalid --minutes: 3'],
    [['--players', '99'], 'invalid --players: 99'],
    [['--day', '2026-02-30'], 'invalid --day: 2026-02-30 (expected a day of the calendar'],
    [['--play', 'gull'], 'unknown play: gull'],
    [['--out', 'plan.doc'], 'expected a file that ends in .pdf, .svg or .png'],
  ])('refuses %o in a sentence', async (words, said) => {
    const { code, err } = await practice(...words);
    expect(code).toBe(2);
    expect(err).toContain(said);
  });
});
