import { describe, expect, it } from 'vitest';
import { type DisciplineName, disciplines } from '../engine/index.ts';
import { demoPlaybook, type Opponent } from '../playbook/index.ts';
import { buildMatchup } from './build-matchup.ts';

const play = demoPlaybook.plays[0]!.id;

/** The names of how well each man of box-zone (tr, tl, lr, ll, c) plays, for an opponent of this discipline. */
function disciplineOf(
  discipline: Opponent['discipline'],
  side: 'left' | 'right',
): readonly (DisciplineName | undefined)[] {
  const opponent: Opponent = { id: 'them', name: 'Them', ...(discipline && { discipline }) };
  const built = buildMatchup(
    { ...demoPlaybook, opponents: [opponent] },
    { play, scheme: 'box-zone', opponent: 'them', side, penalty: null, level: null },
  );
  if (built.kind === 'refused') throw new Error(built.reason);
  const names = Object.keys(disciplines) as DisciplineName[];
  return built.matchup.discipline.map((one) => names.find((name) => disciplines[name] === one));
}

describe('the discipline of an opponent', () => {
  const usual = ['ordinary', 'ordinary', 'ordinary', 'ordinary', 'ordinary'];
  it.each<[string, Opponent['discipline'], 'left' | 'right', readonly string[]]>([
    ['that of the level when nothing is said', undefined, 'right', usual],
    ['that of all', { all: 'sharp' }, 'right', ['sharp', 'sharp', 'sharp', 'sharp', 'sharp']],
    ['that of one man', { tr: 'loose' }, 'right', ['loose', ...usual.slice(1)]],
    ['one man before all', { all: 'sharp', c: 'loose' }, 'right', ['sharp', 'sharp', 'sharp', 'sharp', 'loose']],
    ['the man who is seen there, on the other side', { tr: 'loose' }, 'left', ['ordinary', 'loose', ...usual.slice(2)]],
    ['a man whom another of his schemes has', { pt: 'loose' }, 'right', usual],
  ])('%s', (_, discipline, side, expected) => {
    expect(disciplineOf(discipline, side)).toEqual(expected);
  });

  it('is refused for an opponent who is not in the playbook', () => {
    const choice = { play, scheme: 'box-zone', opponent: 'nobody', side: 'right', penalty: null, level: null } as const;
    expect(buildMatchup(demoPlaybook, choice)).toEqual({ kind: 'refused', reason: 'unknown opponent: nobody' });
  });
});

describe('the goalkeeper of an opponent', () => {
  const goals = Array.from({ length: 20 }, () => ({ at: [-2, 5] as [number, number], result: 'goal' as const }));
  const saves = Array.from({ length: 20 }, () => ({ at: [2, 1] as [number, number], result: 'saved' as const }));
  const opponents: Opponent[] = [
    { id: 'them', name: 'Them', keeper: [...goals, ...saves] },
    { id: 'unseen', name: 'Unseen' },
  ];
  const keeperOf = (opponent: string | undefined, side: 'left' | 'right') => {
    const built = buildMatchup(
      { ...demoPlaybook, opponents },
      { play, scheme: 'box-zone', ...(opponent && { opponent }), side, penalty: null, level: null },
    );
    if (built.kind === 'refused') throw new Error(built.reason);
    return built.matchup.keeper;
  };

  it('stops less where the marks say, from both sides of the field alike', () => {
    const { cover } = keeperOf('them', 'right');
    expect(cover!.highLeft).toBeLessThan(0.7);
    expect(cover!.lowRight).toBeGreaterThan(1.4);
    expect(keeperOf('them', 'left').cover).toEqual(cover);
  });

  it('is that of the level when nothing was marked', () => {
    expect(keeperOf('unseen', 'right')).toEqual(keeperOf(undefined, 'right'));
  });
});

describe('an own scheme that cannot be played', () => {
  it('is refused by its name, in a sentence', () => {
    const [scheme] = demoPlaybook.schemes!;
    const rows = scheme!.rows.slice(0, 1).map((row) => ({ ...row, ball: 'Q7' }));
    const choice = { play, scheme: scheme!.id, side: 'right', penalty: null, level: null } as const;
    expect(buildMatchup({ ...demoPlaybook, schemes: [{ ...scheme!, rows }] }, choice)).toEqual({
      kind: 'refused',
      reason: expect.stringMatching(new RegExp(`^"${scheme!.name}" cannot be played against Lantern: .* Q7`)),
    });
  });
});
