import fc from 'fast-check';
import type { Interval, Level, Play } from '../../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import type { KeeperTurnout, PlannedPlay, PracticeSession } from './block-plan.ts';
import type { LookStand, PlayFindings } from './find-practice.ts';
import type { LookAgainst, LookWorth } from './look-worth.ts';
import type { PracticeWishes } from './plan-practice.ts';
import { taughtLooks } from './taught-looks.ts';

const schemes = ['box-zone', 'jump', 'house-3-2'] as const;

/** A mean with an interval of so much on each side. */
export function about(mean: number, half: number): Interval {
  return { mean, low: mean - half, high: mean + half };
}

/** Findings of a play in which its n-th taught look carries the n-th of these, as much against each of three schemes; all else is usual. */
export function findingsOf(play: Play, carries: readonly number[], more: Partial<PlayFindings> = {}): PlayFindings {
  const looks = taughtLooks(play).map((look, at): LookWorth => {
    const mean = carries[at] ?? 0;
    const against = (scheme: string): LookAgainst => ({
      scheme,
      weight: 1 / schemes.length,
      share: mean > 0 ? 0.5 : 0,
      completion: mean > 0 ? 0.8 : 0,
      carries: mean,
      example: mean > 0 ? 3 : null,
    });
    const all: LookWorth['against'] = [against(schemes[0]), against(schemes[1]), against(schemes[2])];
    return {
      ...look,
      play: play.id,
      isTaught: true,
      isThrown: true,
      carries: about(mean, 0.01),
      decides: null,
      against: all,
    };
  });
  return {
    play: play.id,
    goals: about(0.3, 0.03),
    looks,
    newRead: null,
    instead: null,
    stands: looks.map((look) => standOf(play, look)),
    ...more,
  };
}

function standOf(play: Play, { from, to }: LookWorth): LookStand {
  const opener = play.spots.find(({ id }) => id !== from && id !== to)!.id;
  const names = ['tr', 'tl', 'lr', 'll', 'c'];
  const defenders = names.map((name, at) => ({ name, at_byBeat: {}, atLook: { x: 2 * at - 4, y: 7 } }));
  return { play: play.id, from, to, stand: { scheme: 'jump', trial: 3, opener, drawn: 'tr', defenders } };
}

export const demoPlays: readonly Play[] = demoPlaybook.plays.map(({ id }) => toEnginePlay(demoPlaybook, id));

const carried = fc.array(fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 0.3, noNaN: true })), {
  minLength: 5,
  maxLength: 5,
});

/** One or two plays of the demo with any worths of their looks, some of which surely cost goals. */
export const plannedPlays: fc.Arbitrary<readonly PlannedPlay[]> = fc
  .subarray([...demoPlays.keys()], { minLength: 1, maxLength: 2 })
  .chain((which) =>
    fc.tuple(
      ...which.map((at) => fc.tuple(carried, fc.boolean()).map(([carries, costs]) => planned(at, carries, costs))),
    ),
  );

function planned(at: number, carries: readonly number[], costs: boolean): PlannedPlay {
  const play = demoPlays[at]!;
  const findings = findingsOf(play, carries);
  const looks = findings.looks.map((look) =>
    costs && look.read !== null ? { ...look, decides: about(-0.05, 0.02) } : look,
  );
  return { play, findings: { ...findings, looks } };
}

/** Findings of a play of the demo whose looks carry any goals against each of four schemes that are likely by any weights; some of its looks are new. */
export const weighedPlays: fc.Arbitrary<PlayFindings> = fc
  .record({
    at: fc.nat({ max: demoPlays.length - 1 }),
    weights: fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 4, maxLength: 4 }),
    carries_byLook: fc.array(fc.array(fc.constantFrom(0, 0.005, 0.02, 0.1, 0.4), { minLength: 4, maxLength: 4 }), {
      minLength: 7,
      maxLength: 7,
    }),
    taught: fc.array(fc.boolean(), { minLength: 7, maxLength: 7 }),
  })
  .map(({ at, weights, carries_byLook, taught }) => {
    const findings = findingsOf(demoPlays[at]!, []);
    const all = weights.reduce((sum, weight) => sum + weight, 0);
    const looks = findings.looks.map((look, which) => weighed(look, weights, all, carries_byLook[which % 7]!));
    return { ...findings, looks: looks.map((look, which) => ({ ...look, isTaught: taught[which % 7]! })) };
  });

function weighed(look: LookWorth, weights: readonly number[], all: number, carries: readonly number[]): LookWorth {
  const [first, ...others] = [...schemes, 'four-man']
    .map((scheme, at) => ({ ...look.against[0], scheme, weight: weights[at]! / all, carries: carries[at]! }))
    .sort((a, b) => b.weight * b.carries - a.weight * a.carries || b.weight - a.weight);
  const against: LookWorth['against'] = [first!, ...others];
  return {
    ...look,
    against,
    carries: about(
      against.reduce((sum, one) => sum + one.weight * one.carries, 0),
      0.01,
    ),
  };
}

/** Any turnout and time. */
export const wishes: fc.Arbitrary<PracticeWishes> = fc
  .record({
    halves: fc.nat({ max: 180 }),
    players: fc.nat({ max: 24 }),
    keeper: fc.constantFrom<KeeperTurnout>('none', 'warm', 'cold'),
    session: fc.constantFrom<PracticeSession>('first', 'second'),
    level: fc.constantFrom<Level>('10U', '14U', 'college'),
  })
  .map(({ halves, ...rest }) => wish({ minutes: halves / 2, ...rest }));

/** Twenty minutes with fourteen players and a goalkeeper who warms up in them at 14U, or otherwise. */
export function wish(more: Partial<PracticeWishes> = {}): PracticeWishes {
  return { name: 'Tuesday', minutes: 20, players: 14, keeper: 'cold', level: '14U', scheme: (id) => id, ...more };
}
