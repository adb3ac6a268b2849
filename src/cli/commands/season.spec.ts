import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Chance, demoText, parsePlaybook, serializePlaybook } from '../../playbook/index.ts';
import { writeChanceTable } from '../../teach/index.ts';
import { drawnChances, drawnSeason } from '../../teach/season/drawn-season.fixture.ts';
import { readCsv, writeCsv } from '../chance-csv.ts';
import { runRecorded } from '../recorded-io.fixture.ts';
import { tableWidth } from '../table.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'season-'));
  writeFileSync(join(folder, 'demo.json'), demoText);
  writeFileSync(join(folder, 'season.json'), serializePlaybook(drawnSeason()));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const path = (name: string): string => join(folder, name);

const season = (file: string, ...words: readonly string[]) =>
  runRecorded(['season', path(file), ...words], { worker: new URL('./no-such-worker.js', import.meta.url) });

const chancesIn = (name: string): readonly Chance[] =>
  parsePlaybook(readFileSync(path(name), 'utf8')).value?.chances ?? [];
const without = (chances: readonly Chance[]) => chances.map(({ id: _, ...rest }) => rest);

describe('season', () => {
  it('prints tables and sentences that fit a terminal', async () => {
    const { code, out, err } = await season('season.json');
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Lantern brings surely more goals than the others');
    expect(out).toMatch(/no\s+reliable\s+data/);
    expect(out.replace(/\s+/g, ' ')).toContain('For those who want it: Brier score');
    for (const line of out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(tableWidth);
  });

  it.each(['scheme', 'unit', 'opponent', 'side', 'period'])('groups by %s', async (by) => {
    const { code, out } = await season('season.json', '--by', by);
    expect(code).toBe(0);
    expect(out).toMatch(new RegExp(`^${by} `, 'm'));
  });

  it('says when there is nothing, and what is not known', async () => {
    expect((await season('demo.json')).out).toContain('No chance was written down yet');
    expect(await season('demo.json', '--by', 'weather')).toMatchObject({
      code: 2,
      err: expect.stringContaining('expected call, scheme'),
    });
    expect(await season('season.json', '--opponent', 'nobody')).toMatchObject({
      code: 2,
      err: expect.stringContaining('unknown opponent'),
    });
    expect(await season('demo.json', '--keep')).toMatchObject({ code: 2, err: expect.stringContaining('--load') });
  });

  it('holds two calls beside each other, and says who is not there', async () => {
    const { out } = await season('season.json', '--compare', 'Lantern,quarry');
    expect(out.replace(/\s+/g, ' ')).toMatch(/Compared: Lantern \d+ of \d+ chances, Quarry \d+ of \d+ chances: /);
    expect(out).toContain('3 pairs were possible');
    const json = JSON.parse((await season('season.json', '--compare', 'lantern,ferry', '--json')).out);
    expect(json.compared).toMatchObject({ of: ['lantern', 'ferry'], pairs: 3 });
    for (const [asked, words] of [
      ['lantern,gone', 'unknown group'],
      ['lantern', 'two that differ'],
      ['lantern,lantern', 'two that differ'],
    ])
      expect(await season('season.json', '--compare', asked!)).toMatchObject({
        code: 2,
        err: expect.stringContaining(words!),
      });
  });

  it('counts as JSON, of one opponent alone', async () => {
    const report = JSON.parse(
      (await season('season.json', '--json', '--opponent', 'harbor prep', '--by', 'opponent')).out,
    );
    const all = drawnChances(200).filter(({ opponent }) => opponent === 'Harbor Prep');
    expect(report.chances).toBe(all.length);
    expect(report.ours.groups).toHaveLength(1);
    expect(report.ours.all.goals).toBe(all.filter(({ side, result }) => side === 'ours' && result === 'goal').length);
  });

  it('writes a table that comes back as it was, once', async () => {
    expect((await season('season.json', '--csv', path('out.csv'))).code).toBe(0);
    expect(readFileSync(path('out.csv'), 'utf8').split('\r\n')[0]).toMatch(/^side,date,opponent,/);
    const { code, out } = await season('demo.json', '--load', path('out.csv'), '--keep');
    expect(code).toBe(0);
    expect(out).toContain('Kept in');
    expect(without(chancesIn('demo.json'))).toEqual(without(drawnChances(200)));
    const again = await season('demo.json', '--load', path('out.csv'), '--keep');
    expect(again.err).toContain('0 chances; 200 more were there already');
    expect(again.out).toContain('Nothing was kept.');
    expect(chancesIn('demo.json')).toHaveLength(200);
  });

  it('takes in nothing of a table with a bad line, and says which', async () => {
    const [head, ...rows] = writeChanceTable(drawnChances(30));
    const broken = rows.map((row, at) =>
      at === 11 || at === 20 ? row.map((cell, c) => (c === 1 ? '2026-02-31' : cell)) : row,
    );
    writeFileSync(path('bad.csv'), writeCsv([head!, ...broken]));
    const { code, err } = await season('demo.json', '--load', path('bad.csv'), '--keep');
    expect(code).toBe(1);
    expect(err).toContain('bad.csv, line 13: date: "2026-02-31" is no day');
    expect(err).toContain('line 22:');
    expect(err).toContain('add --good-lines to take the other 28');
    expect(readFileSync(path('demo.json'), 'utf8')).toBe(demoText);
  });

  it('takes the good lines when it is told to, and warns of likely slips', async () => {
    const table =
      'result,call,scorer,date\ngoal,lantern,99,3/4/2026\ngaol,lantern,,3/5/2026\nsaved,Lattern,,3/6/2026\n';
    writeFileSync(path('in.csv'), table);
    const asked = await season('demo.json', '--load', path('in.csv'), '--keep', '--good-lines');
    expect(asked).toMatchObject({ code: 1, err: expect.stringContaining('month or --days day says') });
    const { code, err } = await season(
      'demo.json',
      '--load',
      path('in.csv'),
      '--keep',
      '--good-lines',
      '--days',
      'month',
    );
    expect(code).toBe(0);
    expect(err).toContain('line 3: result: "gaol" is not one of');
    expect(err).toContain('call: 1 line names one that the playbook does not have: Lattern.');
    expect(err).toContain('scorer: 1 line has a number that is not in the roster: 99.');
    expect(err).toContain('2 chances; 1 line left out');
    expect(chancesIn('demo.json').map(({ date }) => date)).toEqual(['2026-03-04', '2026-03-06']);
    expect(await season('demo.json', '--days', 'year')).toMatchObject({ code: 2 });
  });

  it('without --keep writes nothing', async () => {
    writeFileSync(path('in.csv'), writeCsv(writeChanceTable(drawnChances(5))));
    const { out } = await season('demo.json', '--load', path('in.csv'));
    expect(out).toContain('add --keep');
    expect(readFileSync(path('demo.json'), 'utf8')).toBe(demoText);
  });

  it('writes its pages as a PDF', async () => {
    const { code, out } = await season('season.json', '--out', path('season.pdf'));
    expect(code).toBe(0);
    expect(out).toContain('2 pages of Letter');
    expect(readFileSync(path('season.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
  });
});

describe('the table file', () => {
  it('keeps commas, quotes and line ends (RFC 4180, section 2), and marks what looks like a formula', () => {
    const rows = [
      ['a', 'b'],
      ['x, "y"', 'one\ntwo'],
    ];
    const text = writeCsv(rows);
    expect(text).toBe('a,b\r\n"x, ""y""","one\ntwo"\r\n');
    expect(readCsv(`\uFEFF${text}`).slice(0, 2)).toEqual(rows);
    expect(writeCsv([['=1+1']])).toBe('"\'=1+1"\r\n');
  });
});
