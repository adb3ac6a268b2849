import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../demo.ts';
import type { Playbook, Player } from '../schema.ts';
import { lineUpFor, toEnginePlay } from '../to-engine.ts';
import { lineUps } from './line-ups.ts';

const inBook = (playbook: Playbook, side: 'right' | 'left') => {
  const found = lineUps(playbook, 'lantern').find((each) => each.side === side)!;
  if (found.kind !== 'lineUp') throw new Error(found.kind);
  return found;
};
const without = (...numbers: number[]): Playbook => ({
  ...demoPlaybook,
  team: { ...demoPlaybook.team, roster: demoPlaybook.team.roster.filter(({ number }) => !numbers.includes(number)) },
});

const withMan = (number: number, change: Partial<Player>): Playbook => {
  const roster = demoPlaybook.team.roster.map((man) => (man.number === number ? { ...man, ...change } : man));
  return { ...demoPlaybook, team: { ...demoPlaybook.team, roster: roster as Player[] } };
};

describe('the best six for a play', () => {
  test('are those who are sent onto the field, on both sides', () => {
    for (const side of ['right', 'left'] as const) {
      const { men, worth } = inBook(demoPlaybook, side);
      const { players, assignment } = lineUpFor(demoPlaybook, toEnginePlay(demoPlaybook, 'lantern', side));
      expect(men.map((man) => man.number)).toEqual(players.map((player) => player.number));
      expect(worth).toBe(assignment.kind === 'assigned' ? assignment.total : undefined);
    }
  });

  test('the man of the depth chart is at his spot, and it is said why anybody is at his', () => {
    const x = inBook(demoPlaybook, 'right').men.find((man) => man.spot === 'X')!;
    expect(x).toMatchObject({
      number: 4,
      name: 'Odell Marsh',
      pinned: true,
      reasons: ['feeds 5 of 5', 'handles 5 of 5'],
    });
  });

  test('an absence brings in the next man of the depth chart, and costs what the line-ups are apart', () => {
    const { absences, worth } = inBook(demoPlaybook, 'right');
    for (const absence of absences) {
      expect(worth - absence.loss!).toBeCloseTo(inBook(without(absence.number), 'right').worth, 9);
      expect(absence.moves.some(({ number }) => number === absence.number)).toBe(false);
    }
    const { moves } = absences.find(({ number }) => number === 4)!;
    expect(moves.find(({ to }) => to === 'X')?.number).toBe(19);
  });

  test('readings bring a man in as grades do, and put the better shooter where shots are taken', () => {
    const shotAt = (shotSpeedMph: readonly number[]) =>
      inBook(withMan(25, { grades: undefined, measured: { shotSpeedMph: [...shotSpeedMph] } }), 'right');
    const spotOf = (lineUp: ReturnType<typeof inBook>) => lineUp.men.find(({ number }) => number === 25)?.spot;
    expect(spotOf(shotAt([45, 46, 45, 44, 45]))).toBeUndefined();
    const hard = shotAt([82, 83, 84, 82, 83]);
    expect(spotOf(hard)).toBeDefined();
    expect(hard.men.find(({ number }) => number === 25)!.reasons).toContainEqual(
      expect.stringMatching(/^shoots [3-5](\.\d)? of 5$/),
    );
  });

  test('a better reading never makes the six worth less', () => {
    const worths = [4.2, 3.8, 3.5, 3.2, 3, 2.8].map((seconds) => {
      const measured = { sprint20ydSeconds: [seconds, seconds] };
      return inBook(withMan(7, { measured }), 'right').worth;
    });
    expect([...worths].sort((a, b) => a - b)).toEqual(worths);
    expect(worths.at(-1)).toBeGreaterThan(worths[0]!);
  });

  test('a reading that nobody can have measured counts for nothing', () => {
    const worth = (measured: Player['measured']) => inBook(withMan(7, { measured }), 'right').worth;
    expect(worth({ sprint20ydSeconds: [295] })).toBe(worth({}));
  });

  test('with six nobody comes in, and with five there is no line-up', () => {
    const { absences } = inBook(without(25, 28, 22), 'right');
    expect(absences.every((each) => each.loss === undefined && each.comesIn === undefined)).toBe(true);
    expect(lineUps(without(25, 28, 22, 11), 'lantern')).toEqual([
      { kind: 'short', side: 'right', missing: 1 },
      { kind: 'short', side: 'left', missing: 1 },
    ]);
  });

  test('a play that cannot be read has none', () => {
    const plays = [{ ...demoPlaybook.plays[0]!, set: 'nowhere' }];
    expect(lineUps({ ...demoPlaybook, plays }, 'lantern').map(({ kind }) => kind)).toEqual(['unread', 'unread']);
    expect(lineUps(demoPlaybook, 'nothing').map(({ kind }) => kind)).toEqual(['unread', 'unread']);
  });
});
