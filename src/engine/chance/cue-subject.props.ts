import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cueVocabulary } from '../reads/cue-vocabulary.ts';
import { cueSubject } from './cue-subject.ts';
import { defaultChanceParameters } from './parameters.ts';
import { stride } from './state.ts';

const covering = 5;
const ground = { covering, parameters: defaultChanceParameters };
// To a millionth, spread evenly: drawn as doubles, most would lie on the goal's middle.
const number = (min: number, max: number) => fc.integer({ min: min * 1e6, max: max * 1e6 }).map((value) => value / 1e6);
const man = fc.tuple(number(-15, 15), number(-8, 16), number(-7, 7), number(-7, 7));
const picture = fc
  .array(man, { minLength: 6 + covering + 1, maxLength: 6 + covering + 1 })
  .map((men) => Float64Array.from(men.flat()));
const carrier = fc.nat(5);

/** The picture with every man at the place and with the way that `change` gives. */
function changed(seen: Float64Array, change: (x: number, y: number) => readonly [number, number]): Float64Array {
  const out = Float64Array.from(seen);
  for (let at = 0; at < out.length; at += 2) out.set(change(seen[at]!, seen[at + 1]!), at);
  return out;
}

describe('whom a cue is about', () => {
  test('is the same man in the mirror', () => {
    fc.assert(
      fc.property(picture, carrier, (seen, from) => {
        const mirrored = changed(seen, (x, y) => [-x, y]);
        for (const cue of cueVocabulary(from))
          expect(cueSubject(ground, mirrored, from, cue), JSON.stringify(cue)).toBe(
            cueSubject(ground, seen, from, cue),
          );
      }),
    );
  });

  test('is a defender, whoever stands nearest among them', () => {
    fc.assert(
      fc.property(picture, carrier, (seen, from) => {
        for (const cue of cueVocabulary(from)) {
          const subject = cueSubject(ground, seen, from, cue);
          expect(subject === -1 || (subject >= 6 && subject < 6 + covering), JSON.stringify(cue)).toBe(true);
        }
      }),
    );
  });

  test('does not hang on the order of the defenders', () => {
    fc.assert(
      // Unbiased, so that no two men stand exactly as far away: such are told apart by nothing but their order.
      fc.property(fc.noBias(picture), carrier, fc.integer({ min: 1, max: covering - 1 }), (seen, from, turn) => {
        const turned = Float64Array.from(seen);
        const moved = (i: number): number => 6 + ((i + turn) % covering);
        for (let i = 0; i < covering; i++)
          turned.set(seen.subarray(stride * (6 + i), stride * (7 + i)), stride * moved(i));
        for (const cue of cueVocabulary(from)) {
          const subject = cueSubject(ground, seen, from, cue);
          const expected = subject < 0 ? -1 : moved(subject - 6);
          expect(cueSubject(ground, turned, from, cue), JSON.stringify(cue)).toBe(expected);
        }
      }),
    );
  });
});

describe('a lane that is taken', () => {
  /** Least distance of a man from the points of a line, one of a thousand of them in turn. */
  function leastTo(seen: Float64Array, agent: number, from: number, to: number): number {
    const at = (man: number, axis: number): number => seen[stride * man + axis]!;
    const shares = Array.from({ length: 1001 }, (_, i) => i / 1000);
    const point = (share: number, axis: number): number => at(from, axis) + share * (at(to, axis) - at(from, axis));
    return Math.min(
      ...shares.map((share) => Math.hypot(at(agent, 0) - point(share, 0), at(agent, 1) - point(share, 1))),
    );
  }

  test('is so by a man who is within a yard of it, and by every one who is within a yard of its middle', () => {
    fc.assert(
      fc.property(picture, carrier, fc.nat(5), (seen, from, to) => {
        fc.pre(from !== to);
        const subject = cueSubject(ground, seen, from, { kind: 'laneTaken', who: to });
        if (subject >= 0) expect(leastTo(seen, subject, from, to)).toBeLessThan(1.02);
        const middle = [0, 1].map((axis) => (seen[stride * from + axis]! + seen[stride * to + axis]!) / 2);
        const inTheWay = Array.from({ length: covering }, (_, i) => 6 + i).some(
          (agent) => Math.hypot(seen[stride * agent]! - middle[0]!, seen[stride * agent + 1]! - middle[1]!) < 0.98,
        );
        const length = Math.hypot(
          seen[stride * from]! - seen[stride * to]!,
          seen[stride * from + 1]! - seen[stride * to + 1]!,
        );
        // On a long pass a yard from its middle is well away from both ends.
        if (inTheWay && length > 8) expect(subject).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 300 },
    );
  });
});
