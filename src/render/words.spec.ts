import { describe, expect, it } from 'vitest';
import { duty, type TraceEvent } from '../engine/index.ts';
import { handMadeNames, handMadeTrace } from './hand-made.fixture.ts';
import { distanceToSegment } from './lane-words.ts';
import { percent } from './number-text.ts';
import { dutyClause, eventLine, eventWords } from './words.ts';

const trace = handMadeTrace();
const words = (event: TraceEvent): string => eventWords(event, trace, handMadeNames);
const at = { time: 0.5 };

describe('eventWords', () => {
  const table: readonly (readonly [TraceEvent, string])[] = [
    [{ kind: 'restart', time: 0, who: 0 }, 'Whistle: P restarts with the ball outside the box'],
    [{ kind: 'restart', ...at, who: 0 }, 'Whistle: P restarts with the ball'],
    [{ kind: 'setUp', time: 0 }, 'The set is up'],
    [{ kind: 'setUp', ...at }, 'The set is up: first the ball goes round to see the defense, then the play begins'],
    [{ kind: 'beat', ...at, beat: 'skip', lastTen: false }, 'Step "skip" begins'],
    [{ kind: 'beat', ...at, beat: 'flow', lastTen: false }, 'Step "flow" begins: P pass TR'],
    [{ kind: 'read', ...at, who: 1, read: 0, lastTen: false }, 'TR sees his read "free: shoot" and takes it'],
    [{ kind: 'read', ...at, who: 1, read: 1, lastTen: false }, 'TR sees his read "open WL: skip WL" and takes it'],
    [{ kind: 'read', ...at, who: 1, read: 0, lastTen: true }, 'TR sees his read "always: shoot" and takes it'],
    [
      {
        kind: 'pass',
        ...at,
        from: 0,
        to: 2,
        style: 'adjacent',
        lob: false,
        completion: 0.953,
        believed: 0.953,
        why: 'open',
      },
      'P passes to TL: nobody in the lane (odds 95 %)',
    ],
    [
      {
        kind: 'pass',
        ...at,
        from: 1,
        to: 4,
        style: 'skip',
        lob: false,
        completion: 0.86,
        believed: 0.86,
        why: 'script',
      },
      'TR skips to WL: tr stands in the lane (odds 86 %)',
    ],
    [
      { kind: 'pass', ...at, from: 4, to: 5, style: 'feed', lob: true, completion: 0.6, believed: 0.6, why: 'read' },
      'WL feeds C over the sticks (odds 60 %)',
    ],
    [
      {
        kind: 'pass',
        ...at,
        from: 0,
        to: 2,
        style: 'adjacent',
        lob: false,
        completion: 0.997,
        believed: 0.997,
        why: 'safe',
      },
      'P passes to TL to be safe: nobody in the lane (odds 99 %)',
    ],
    [
      {
        kind: 'pass',
        ...at,
        from: 0,
        to: 2,
        style: 'adjacent',
        lob: false,
        completion: 0.1,
        believed: 0.9,
        why: 'script',
      },
      'P passes to TL: nobody in the lane, but wide of him (odds 10 %, he thought 90 %)',
    ],
    [
      { kind: 'pass', ...at, from: 1, to: 4, style: 'skip', lob: false, completion: 0.4, believed: 0.9, why: 'open' },
      'TR skips to WL: tr stands in the lane (odds 40 %, he thought 90 %)',
    ],
    [{ kind: 'catch', ...at, who: 2 }, 'TL catches: nobody within 5 yd'],
    [{ kind: 'dropped', ...at, who: 4 }, 'WL drops it'],
    [{ kind: 'intercepted', ...at, by: 3 }, 'll picks it off'],
    [{ kind: 'deflected', ...at, by: 0 }, 'tr gets a stick on the pass'],
    [{ kind: 'stripped', ...at, by: 5 }, 'The released man checks the ball loose'],
    [{ kind: 'badPass', ...at }, 'The pass is out of reach'],
    [{ kind: 'groundBall', ...at, won: 'offense', who: 5 }, 'Ground ball: C gets it back'],
    [{ kind: 'groundBall', ...at, won: 'defense', who: 4 }, 'Ground ball: c has it'],
    [{ kind: 'fake', ...at, who: 1, toward: 3 }, 'TR fakes to WR'],
    [{ kind: 'bite', ...at, by: 2, seconds: 0.35 }, 'lr bites on the fake and is out of it for 0.4 s'],
    [{ kind: 'duty', ...at, by: 1, duty: duty.split, a: 0, b: 2, late: 0.31 }, 'tl splits P and TL, 0.3 s late'],
    [{ kind: 'duty', ...at, by: 1, duty: duty.place, a: -1, b: -1, late: 0 }, 'tl holds his place'],
    [
      { kind: 'shot', ...at, who: 4, goalOdds: 0.31, distance: 8.46, pressed: true, assistedBy: 1 },
      "WL shoots off TR's pass from 8.5 yd with a man on him (goal odds 31 %)",
    ],
    [
      { kind: 'shot', ...at, who: 0, goalOdds: 0.1, distance: 14, pressed: false, assistedBy: -1 },
      'P shoots from 14.0 yd with room (goal odds 10 %)',
    ],
    [{ kind: 'goal', ...at, who: 4, assistedBy: 1 }, 'GOAL by WL, from TR'],
    [{ kind: 'goal', ...at, who: 4, assistedBy: -1 }, 'GOAL by WL'],
    [{ kind: 'save', ...at, who: 4, kept: true }, "The keeper saves WL's shot and holds it"],
    [{ kind: 'save', ...at, who: 4, kept: false }, "The keeper saves WL's shot and the ball is loose"],
    [{ kind: 'pipe', ...at, who: 4, kept: false }, 'WL hits the pipe and the ball is loose'],
    [{ kind: 'wide', ...at, who: 4, kept: true }, 'WL shoots wide: an attacker is nearest to the end line'],
    [{ kind: 'wide', ...at, who: 4, kept: false }, 'WL shoots wide: a defender is nearest to the end line'],
    [{ kind: 'blocked', ...at, by: 3 }, 'll blocks the shot'],
    [{ kind: 'blocked', ...at, by: -1 }, 'The keeper blocks the shot'],
    [{ kind: 'reset', ...at, refused: null }, 'The script cannot go on: the offense resets'],
    [
      { kind: 'reset', ...at, refused: { from: 3, to: 2, believed: 0.62 } },
      'WR does not dare to throw to TL (he thought 62 %): the offense resets',
    ],
    [{ kind: 'leave', ...at }, 'The play is left for what is open'],
    [{ kind: 'released', ...at }, 'The penalized man is released and runs to his place'],
    [
      { kind: 'turnover', ...at, how: 'intercepted', back: 2 },
      'Ball lost: the pass was picked off; 2 attackers are back',
    ],
    [
      { kind: 'turnover', ...at, how: 'wide', back: 0 },
      'Ball lost: the shot went wide and the defense was nearest; nobody is back',
    ],
    [{ kind: 'end', ...at, how: 'penaltyOver' }, 'The penalty is over and the sides are even'],
  ];
  it.each(table)('%j', (event, sentence) => {
    expect(words(event)).toBe(sentence);
  });

  it('puts the time in front in a column of its own', () => {
    expect(eventLine({ kind: 'reset', time: 2.06, refused: null }, trace, handMadeNames)).toBe(
      ' 2.1 s  The script cannot go on: the offense resets',
    );
    expect(eventLine({ kind: 'reset', time: 12.34, refused: null }, trace, handMadeNames)).toBe(
      '12.3 s  The script cannot go on: the offense resets',
    );
  });
});

describe('dutyClause', () => {
  it('has words for every duty and refuses an unknown one', () => {
    for (const name of Object.keys(duty)) expect(dutyClause('tr', name, 'P', 'TR')).toMatch(/^tr /);
    // "ll splits WL and WL"
    expect(dutyClause('ll', 'split', 'WL', 'WL')).toBe('ll sags off WL');
    expect(() => dutyClause('tr', 'nap', undefined, undefined)).toThrow(/unknown duty: nap \(expected place/);
  });
});

describe('distanceToSegment', () => {
  it.each([
    [{ x: 0, y: 1 }, { x: -1, y: 0 }, { x: 1, y: 0 }, 1],
    [{ x: 4, y: 4 }, { x: -1, y: 0 }, { x: 1, y: 0 }, 5],
    [{ x: 3, y: 4 }, { x: 0, y: 0 }, { x: 0, y: 0 }, 5],
  ])('from %j to %j %j is %d', (point, start, end, expected) => {
    expect(distanceToSegment(point, start, end)).toBeCloseTo(expected, 12);
  });
});

it.each([
  [0, '0 %'],
  [-0.001, '0 %'],
  [0.864, '86 %'],
  [1, '100 %'],
])('percent of %d', (share, shown) => {
  expect(percent(share)).toBe(shown);
});
