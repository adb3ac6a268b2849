import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Chance, demoPlaybook, parsePlaybook, serializePlaybook } from '../../playbook/index.ts';
import type { Marked } from './film-tool.ts';
import {
  cuesOf,
  type MomentEdit,
  markMan,
  momentsOf,
  repeatMoment,
  retimeMoment,
  setCues,
  unmarkMan,
} from './moment-edits.ts';

const bare: Chance = { id: 'c', side: 'others', opponent: 'copper-falls', result: 'saved' };

const point = fc.record({
  x: fc.double({ min: -80, max: 80, noNaN: true }),
  y: fc.double({ min: -80, max: 80, noNaN: true }),
});
const time = fc.oneof(fc.constantFrom(0, 1, 2, 2.01), fc.double({ min: -3, max: 700, noNaN: true }));
const who: fc.Arbitrary<Marked> = fc.oneof(
  fc.constant<Marked>({ kind: 'ball' }),
  fc.nat(8).map((at): Marked => ({ kind: 'defender', at })),
  fc.nat(8).map((at): Marked => ({ kind: 'attacker', at })),
);
const sign = fc.constantFrom('crease-glued', 'not skip-lane', 'both-pipes', 'goes-behind');

type Step = (chance: Chance) => MomentEdit;
const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.tuple(time, fc.constantFrom('ball', 'defender', 'attacker'), point).map(
      ([at, what, place]): Step =>
        (chance) =>
          markMan(chance, at, { kind: 'set', what, at: place }, 'film'),
    ),
  },
  fc.tuple(time, who, point).map(
    ([at, one, place]): Step =>
      (chance) =>
        markMan(chance, at, { kind: 'move', who: one, at: place }, 'field'),
  ),
  fc.tuple(time, who).map(
    ([at, one]): Step =>
      (chance) =>
        unmarkMan(chance, at, one),
  ),
  fc.tuple(time, time).map(
    ([from, to]): Step =>
      (chance) =>
        repeatMoment(chance, from, to),
  ),
  fc.tuple(time, time).map(
    ([from, to]): Step =>
      (chance) =>
        retimeMoment(chance, from, to),
  ),
  fc.uniqueArray(sign).map(
    (cues): Step =>
      (chance) =>
        setCues(chance, cues, 'P'),
  ),
);

describe('marks of a man-up', () => {
  it('are such that the playbook can be read, in the order of their times, whatever was done to them', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 25 }), (steps) => {
        const chance = steps.reduce((now, one) => {
          const edit = one(now);
          return edit.kind === 'edited' ? edit.chance : now;
        }, bare);
        const { diagnostics } = parsePlaybook(serializePlaybook({ ...demoPlaybook, chances: [chance] }));
        expect(diagnostics.filter(({ path }) => path.startsWith('chances'))).toEqual([]);
        const times = momentsOf(chance).map((mark) => mark.time);
        expect(times).toEqual([...times].sort((one, other) => one - other));
      }),
      { numRuns: 60 },
    );
  });

  it('are changed in a new man-up only, and a refusal says why', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), step, (steps, last) => {
        const chance = steps.reduce((now, one) => {
          const edit = one(now);
          return edit.kind === 'edited' ? edit.chance : now;
        }, bare);
        const text = JSON.stringify(chance);
        const edit = last(chance);
        expect(JSON.stringify(chance)).toBe(text);
        if (edit.kind === 'refused') expect(edit.reason).toMatch(/^[A-Z].*\.$/);
      }),
    );
  });

  it('brings back the ticks that were set, with moments and without', () => {
    fc.assert(
      fc.property(fc.uniqueArray(sign), fc.boolean(), (cues, hasMoment) => {
        const begun = hasMoment
          ? markMan(bare, 1, { kind: 'set', what: 'ball', at: { x: 0, y: 11 } }, 'field')
          : ({ kind: 'edited', chance: bare } as const);
        const ticked = begun.kind === 'edited' ? setCues(begun.chance, cues, 'P') : begun;
        if (ticked.kind === 'refused') throw new Error(ticked.reason);
        expect(cuesOf(ticked.chance)).toEqual(cues);
        const cleared = setCues(ticked.chance, [], 'P');
        expect(cleared).toEqual({ kind: 'edited', chance: begun.kind === 'edited' ? begun.chance : bare });
      }),
    );
  });
});
