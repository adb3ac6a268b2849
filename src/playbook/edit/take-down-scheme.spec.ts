import { describe, expect, test } from 'vitest';
import { createDutySheet, lapOf, schemeById, schemeList, sets } from '../../engine/index.ts';
import { demoPlaybook } from '../demo.ts';
import { hasErrors } from '../diagnostic.ts';
import { parsePlaybook } from '../parse.ts';
import { toEngineScheme } from '../scheme-data.ts';
import { serializePlaybook } from '../serialize.ts';
import { takeDownScheme } from './take-down-scheme.ts';

describe('a built-in scheme that is taken down', () => {
  const cases = schemeList.flatMap(({ id }) => ['2-3-1', '3-3', '2-2-2-low'].map((set) => [id, set] as const));
  test.each(cases)('%s against the %s', (id, set) => {
    const edit = takeDownScheme(demoPlaybook, id, 'Ours', { set });
    if (edit.kind === 'refused') throw new Error(edit.reason);
    expect(hasErrors(parsePlaybook(serializePlaybook(edit.playbook)).diagnostics)).toBe(false);
    const { spots } = sets[set]!;
    const scheme = schemeById(id)!;
    const own = toEngineScheme(edit.playbook, 'ours', { spots })!;
    expect(own.names).toEqual(scheme.names);
    expect(own.shortSticks).toEqual(scheme.shortSticks);
    // Both walk their duties through, and stand in about the same places: what the language cannot say is a matter of steps.
    const [meant, written] = [scheme, own].map((each) => createDutySheet(each, spots, lapOf(spots)));
    const apart = meant!.rows.flatMap((row, i) =>
      row.places.map(({ x, y }, k) =>
        Math.hypot(x - written!.rows[i]!.places[k]!.x, y - written!.rows[i]!.places[k]!.y),
      ),
    );
    expect(apart.reduce((sum, each) => sum + each, 0) / apart.length).toBeLessThan(1);
  });

  test('says what the language cannot', () => {
    expect(takeDownScheme(demoPlaybook, 'two-down', 'Ours')).toHaveProperty('also', [
      'Ball at WL: "lane to TR, TL behind him" of tl is written without the man at his back.',
      'Ball at WR: "lane to TL, TR behind him" of tr is written without the man at his back.',
    ]);
  });

  test.each([
    ['an unknown scheme', takeDownScheme(demoPlaybook, 'nothing', 'Ours'), /No built-in/],
    ['an unknown set', takeDownScheme(demoPlaybook, 'box-zone', 'Ours', { set: 'x' }), /No set/],
    ['a star who is not there', takeDownScheme(demoPlaybook, 'shutoff', 'Ours', { star: 'P' }), /no spot P/],
    ['no name', takeDownScheme(demoPlaybook, 'box-zone', ''), /needs a name/],
  ])('refused: %s', (_, edit, words) => {
    expect(edit.kind === 'refused' && edit.reason).toMatch(words);
  });
});
