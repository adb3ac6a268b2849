import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { demoText } from '../../playbook/index.ts';
import { runRecorded } from '../recorded-io.fixture.ts';
import { tableWidth } from '../table.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'call-'));
  writeFileSync(join(folder, 'demo.json'), demoText);
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

async function call(...words: readonly string[]) {
  const ran = await runRecorded(['call', join(folder, 'demo.json'), ...words]);
  return { ...ran, err: ran.err.replace(/\s+/g, ' ') };
}

const quick = ['--opponent', 'copper-falls', '--trials', '40'];

describe('call', () => {
  it('prints what is believed, a row for each call and the mix, no wider than a terminal', async () => {
    const { code, out } = await call(...quick);
    expect(code).toBe(0);
    expect(out).toContain('What to call against Copper Falls, with a penalty of 60 s.');
    expect(out).toContain('Believed: Box-and-one zone 75 %, Box with crease string 25 %.');
    for (const name of ['Ferry', 'Quarry', 'Lantern']) expect(out).toMatch(new RegExp(`^${name} +0\\.\\d\\d \\(`, 'm'));
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(tableWidth);
  });

  it('mixes within what is learnt, by the belief that is typed, and gives the same again', async () => {
    const words = [
      ...quick,
      '--belief',
      'box-zone:3,jump:1',
      '--learnt',
      '2',
      '--trust',
      '0',
      '--penalty',
      '30',
      '--json',
    ];
    const { out } = await call(...words);
    expect((await call(...words)).out).toBe(out);
    const found = JSON.parse(out);
    expect(found).toMatchObject({ opponent: 'copper-falls', penalty: 30, trials: 40, learnt: 2, trust: 0 });
    expect(found.belief).toEqual({ 'box-zone': 0.75, jump: 0.25 });
    const shares: readonly number[] = found.calls.map((one: { readonly share: number }) => one.share);
    expect(shares.filter((share) => share > 0).length).toBeLessThanOrEqual(2);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    // The mix makes at worst what its worst scheme leaves it: held against the table that is printed with it.
    const worst = ['box-zone', 'jump'].map((id) =>
      found.calls.reduce(
        (sum: number, one: { readonly share: number; readonly goals_byScheme: Record<string, { mean: number }> }) =>
          sum + one.share * one.goals_byScheme[id]!.mean,
        0,
      ),
    );
    expect(found.atWorst).toBeCloseTo(Math.min(...worst), 9);
  });

  it.each([
    [['--trials', '40'], 'missing --opponent'],
    [['--opponent', 'copper'], 'unknown opponent after --opponent: copper'],
    [[...quick, '--trust', '1.5'], 'invalid --trust: 1.5 (expected a number from 0 to 1)'],
    [[...quick, '--learnt', '0'], 'invalid --learnt'],
    [[...quick, '--belief', 'box-zon:3'], 'Did you mean box-zone?'],
    [[...quick, '--belief', 'box-zone:x'], 'invalid --belief: box-zone:x'],
    [[...quick, '--belief', 'northgate'], 'invalid --belief: northgate'],
    [[...quick, '--play', 'lanter'], 'Did you mean lantern?'],
  ])('says what is wrong and what to do: %s', async (words, said) => {
    const { code, out, err } = await call(...words);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(said);
  });
});
