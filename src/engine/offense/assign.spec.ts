import { describe, expect, test } from 'vitest';
import { type Assignment, assignSpots, type Candidate, fitAt, replacements } from './assign.ts';
import { mirrorSpot } from './mirror.ts';
import { sets } from './sets.ts';

const spots = sets['2-3-1']!.spots;

/** `name hand feed shoot inside handle`, one man a line. */
function men(text: string): readonly Candidate[] {
  return text
    .trim()
    .split('\n')
    .map((line) => {
      const [id, hand, feed, shoot, inside, handle, crosse] = line.trim().split(/\s+/);
      return {
        id: id!,
        hand: hand as Candidate['hand'],
        crosse: (crosse ?? 'short') as Candidate['crosse'],
        skills: {
          feed: Number(feed),
          shoot: Number(shoot),
          inside: Number(inside),
          handle: Number(handle),
          speed: 3,
          catch: 3,
          pass: 3,
        },
      };
    });
}

const eight = men(`
  quarterback right 5 2 1 5
  lefty       left  3 5 2 3
  righty      right 3 5 2 3
  finisher    right 1 3 5 1
  leftWing    left  4 4 2 3
  rightWing   right 4 4 2 3
  benchL      left  2 2 2 2
  benchR      right 2 2 2 2`);

function lineUp(assignment: Assignment): Record<string, string> {
  if (assignment.kind === 'short') return {};
  return Object.fromEntries(assignment.fits.map((fit) => [fit.spot, fit.candidate]));
}

describe('assignSpots', () => {
  test('puts each man where his hand and skills belong', () => {
    expect(lineUp(assignSpots(spots, eight))).toEqual({
      X: 'quarterback',
      TR: 'lefty',
      TL: 'righty',
      C: 'finisher',
      WR: 'leftWing',
      WL: 'rightWing',
    });
  });

  test('on the mirrored spots the same men change sides and lose nothing', () => {
    const right = assignSpots(spots, eight);
    const left = assignSpots(spots.map(mirrorSpot), eight);
    expect(left.kind === 'assigned' && right.kind === 'assigned' && left.total).toBe(
      right.kind === 'assigned' && right.total,
    );
    expect(lineUp(left)).toEqual(lineUp(right));
  });

  test('is worth as much as the best of all ways to place ten men', () => {
    const ten = [...eight, ...men('pole right 3 4 3 3 pole\nboth both 3 3 4 3')];
    const assigned = assignSpots(spots, ten);
    expect(assigned.kind === 'assigned' && assigned.total).toBeCloseTo(bestOfAll(ten), 9);
  });

  test('leaves the goalkeeper in the goal', () => {
    const seven = [...eight.slice(0, 6), ...men('keeper left 5 5 5 5 goalkeeper')];
    expect(Object.values(lineUp(assignSpots(spots, seven)))).not.toContain('keeper');
  });

  test('says how many are missing', () => {
    expect(assignSpots(spots, eight.slice(0, 4))).toEqual({ kind: 'short', missing: 2 });
  });

  test('keeps a pinned man where the coach put him, and fits the rest round him', () => {
    const assigned = assignSpots(spots, eight, new Map([['X', 'benchL']]));
    expect(lineUp(assigned).X).toBe('benchL');
    expect(assigned.kind === 'assigned' && assigned.fits.filter((fit) => fit.pinned).map((fit) => fit.spot)).toEqual([
      'X',
    ]);
    expect(new Set(Object.values(lineUp(assigned))).size).toBe(6);
  });

  test('gives its reasons in words, the strongest need first', () => {
    const assigned = assignSpots(spots, eight);
    const reasons = (spot: string) =>
      assigned.kind === 'assigned' && assigned.fits.find((fit) => fit.spot === spot)!.reasons;
    expect(reasons('X')).toEqual(['feeds 5 of 5', 'handles 5 of 5']);
    expect(reasons('TR')).toEqual(['shoots 5 of 5', 'handles 3 of 5', 'feeds 3 of 5', 'left hand inside']);
  });

  test.each([
    ['a spot that is not there', new Map([['BR', 'lefty']]), /unknown spot: BR \(expected TR, TL/],
    ['a man who is not there', new Map([['X', 'nobody']]), /unknown candidate: nobody at X/],
    [
      'one man twice',
      new Map([
        ['X', 'lefty'],
        ['C', 'lefty'],
      ]),
      /lefty stands at two spots/,
    ],
  ])('refuses to pin %s', (_, pins, says) => {
    expect(() => assignSpots(spots, eight, pins)).toThrow(says);
  });
});

describe('fitAt', () => {
  const top = spots.find((spot) => spot.id === 'TR')!;
  const [leftHanded, rightHanded, either, pole] = men(
    'l left 3 3 3 3\nr right 3 3 3 3\nb both 3 3 3 3\np left 3 3 3 3 pole',
  );

  test('a wrong hand costs, both hands do not, a pole costs', () => {
    expect(fitAt(top, leftHanded!)).toBe(0);
    expect(fitAt(top, either!)).toBe(0);
    expect(fitAt(top, rightHanded!)).toBe(-6);
    expect(fitAt(top, pole!)).toBe(-9);
  });
});

describe('what counts at every spot', () => {
  const [usual] = men('u both 3 3 3 3');
  const quick: Candidate = { ...usual!, skills: { ...usual!.skills, speed: 5, catch: 4, pass: 3 } };

  test('is the mean of running, catching and passing', () => {
    for (const spot of spots) expect(fitAt(spot, quick) - fitAt(spot, usual!)).toBeCloseTo(1, 9);
  });

  test('brings the quicker of two equal men onto the field', () => {
    const five = men('a both 3 3 3 3\nb both 3 3 3 3\nc both 3 3 3 3\nd both 3 3 3 3\ne both 3 3 3 3');
    const line = lineUp(assignSpots(spots, [...five, { ...usual!, id: 'slow' }, { ...quick, id: 'quick' }]));
    expect(Object.values(line)).toContain('quick');
  });
});

describe('replacements', () => {
  test('names who comes in, who shifts, and what is lost, for each of the six', () => {
    const all = replacements(spots, eight);
    expect(all.map((each) => each.missing).sort()).toEqual([
      'finisher',
      'leftWing',
      'lefty',
      'quarterback',
      'rightWing',
      'righty',
    ]);
    for (const each of all) {
      expect(each.loss).toBeGreaterThan(0);
      expect(['benchL', 'benchR']).toContain(each.comesIn);
      expect(each.moves.some((move) => move.candidate === each.comesIn && move.from === null)).toBe(true);
    }
  });

  test('has nobody to send in when there are only six', () => {
    expect(replacements(spots, eight.slice(0, 6)).every((each) => each.comesIn === null && each.loss === null)).toBe(
      true,
    );
  });
});

/** Tries every way to place the men. */
function bestOfAll(all: readonly Candidate[], spot = 0, taken: ReadonlySet<string> = new Set()): number {
  if (spot === spots.length) return 0;
  return Math.max(
    ...all
      .filter((man) => !taken.has(man.id))
      .map((man) => fitAt(spots[spot]!, man) + bestOfAll(all, spot + 1, new Set([...taken, man.id]))),
  );
}
