import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Action, Cue, Point, Trigger } from '../../engine/index.ts';
import { parseAction, parseCarrierAction } from './parse-action.ts';
import { parseCue } from './parse-cue.ts';
import { parseDuty } from './parse-duty.ts';
import { parseTrigger } from './parse-trigger.ts';
import { actionPattern, cuePattern, dutyPattern, readActionPattern, triggerPattern } from './patterns.ts';
import type { PhraseFault } from './phrase.ts';
import type { PlayNames } from './play-names.ts';
import { printAction, printCarrierAction, printCue, printTrigger } from './print-phrase.ts';

const spots = ['P', 'TR', 'TL', 'WR', 'X', 'A12'];
const names: PlayNames = {
  spots: new Map(spots.map((id, i) => [id, { x: i, y: 10 }])),
  beats: new Set(['go', 'swing-2']),
  placeFault: () => undefined,
};

const spot = fc.constantFrom(...spots);
const other = (self: string) => fc.constantFrom(...spots.filter((id) => id !== self));
const yards = fc.integer({ min: -300, max: 400 }).map((tenths) => tenths / 10 + 0);
const point: fc.Arbitrary<Point> = fc.record({ x: yards, y: yards });
const path = fc.array(point, { minLength: 1, maxLength: 4 });
const seconds = fc.integer({ min: 1, max: 200 }).map((tenths) => tenths / 10);

const action: fc.Arbitrary<Action> = spot.chain((by) =>
  fc.oneof<fc.Arbitrary<Action>[]>(
    fc.record({
      kind: fc.constant('pass'),
      by: fc.constant(by),
      to: other(by),
      style: fc.constantFrom('adjacent', 'skip', 'feed'),
    }),
    fc.record({ kind: fc.constant('carry'), by: fc.constant(by), path }),
    fc.record({
      kind: fc.constant('run'),
      run: fc.constantFrom('cut', 'pop', 'sneak', 'flash', 'replace', 'backUp', 'getBack'),
      by: fc.constant(by),
      path,
      go: fc.constantFrom('now', 'whenOpen'),
    }),
    fc.record({ kind: fc.constant('pick'), by: fc.constant(by), at: point, on: other(by) }),
    fc.record({ kind: fc.constant('seal'), by: fc.constant(by), on: other(by) }),
    fc.record({ kind: fc.constant('fake'), by: fc.constant(by), toward: other(by) }),
    fc.record({ kind: fc.constant('hold'), by: fc.constant(by), seconds }),
    fc.record({ kind: fc.constant('stepIn'), by: fc.constant(by), to: point }),
    fc.record({ kind: fc.constant('shot'), by: fc.constant(by) }),
  ),
);
const trigger: fc.Arbitrary<Trigger> = fc.oneof<fc.Arbitrary<Trigger>[]>(
  fc.constant({ kind: 'start' }),
  fc.record({ kind: fc.constant('catch'), by: spot }),
  fc.record({ kind: fc.constant('pass'), from: spot }),
  spot.chain((from) => fc.record({ kind: fc.constant('pass' as const), from: fc.constant(from), to: other(from) })),
  fc.record({ kind: fc.constant('arrival'), who: spot }),
  fc.record({ kind: fc.constant('call'), beat: fc.constantFrom(...names.beats), seconds }),
);
const cue: fc.Arbitrary<Cue> = fc.oneof<fc.Arbitrary<Cue>[]>(
  fc.record({
    kind: fc.constantFrom(
      'iAmFree',
      'iAmPressed',
      'nextSteps',
      'myManLeaves',
      'creaseUp',
      'farLowLooksAway',
      'farLowCrosses',
    ),
  }),
  fc.record({ kind: fc.constantFrom('open', 'left', 'laneTaken'), who: other('X') }),
);

describe('a phrase that was printed reads back', () => {
  test('actions', () => {
    fc.assert(
      fc.property(action, (value) => {
        expect(parseAction(printAction(value), names)).toEqual({ value, faults: [] });
      }),
    );
  });

  test('the ends of reads', () => {
    fc.assert(
      fc.property(action, (value) => {
        fc.pre(!['run', 'pick', 'seal'].includes(value.kind));
        expect(parseCarrierAction(printCarrierAction(value), value.by, names)).toEqual({ value, faults: [] });
        for (const kind of ['runIn', 'reset'] as const) {
          const order = { kind, by: value.by };
          expect(parseCarrierAction(printCarrierAction(order), value.by, names)).toEqual({ value: order, faults: [] });
        }
      }),
    );
  });

  test('triggers and cues', () => {
    fc.assert(
      fc.property(trigger, cue, (when, seen) => {
        expect(parseTrigger(printTrigger(when), names)).toEqual({ value: when, faults: [] });
        expect(parseCue(printCue(seen), 'X', names)).toEqual({ value: seen, faults: [] });
      }),
    );
  });
});

/** Words of the language in any order, most of them nonsense and some not. */
const words = fc.array(
  fc.constantFrom(
    'TR',
    'X',
    'ZZ',
    'tr',
    'c',
    'pass',
    'skip',
    'reset',
    'step',
    'in',
    'carry',
    'cut',
    'pick',
    'at',
    'on',
    'to',
    'via',
    '3,4',
    '-2.5,',
    '7',
    '1.',
    ',',
    '+',
    'when',
    'open',
    'hold',
    'shoot',
    'start',
    'catch',
    'call',
    'go',
    'free',
    'left',
    'split',
    'ball',
    'crease',
    'man',
    'up',
    'far',
    'low',
    'lane',
    'taken',
    'next',
    'steps',
    'my',
    'leaves',
    '  ',
  ),
  { maxLength: 7 },
);
/** Phrases that are right, with one word exchanged now and then. */
const nearMiss = fc
  .tuple(
    fc.oneof(action.map(printAction), action.map(printCarrierAction), trigger.map(printTrigger), cue.map(printCue)),
    fc.nat(),
    words,
  )
  .map(([phrase, at, [word]]) => {
    const parts = phrase.split(' ');
    if (word !== undefined && at % 3 === 0) parts[at % parts.length] = word;
    return parts.join(at % 5 === 0 ? '  ' : ' ');
  });

/** Faults of form: what the patterns can see too. Unknown names and ranges are beyond them. */
function wellFormed(faults: readonly PhraseFault[]): boolean {
  return faults.every((fault) => !fault.code.endsWith('-syntax'));
}

describe('the patterns of the JSON Schema and the readers know the same language', () => {
  const phrase = fc.oneof(
    words.map((parts) => parts.join(' ')),
    nearMiss,
  );
  test.each([
    ['actions', actionPattern, (text: string) => parseAction(text, names).faults],
    ['ends of reads', readActionPattern, (text: string) => parseCarrierAction(text, 'P', names).faults],
    ['triggers', triggerPattern, (text: string) => parseTrigger(text, names).faults],
    ['cues', cuePattern, (text: string) => parseCue(text, 'P', names).faults],
    [
      'duties',
      dutyPattern,
      (text: string) => parseDuty(text, { men: new Set(['tr', 'c']), spots: new Set(spots) }).faults,
    ],
  ])('%s', (_, pattern, faultsOf) => {
    fc.assert(
      fc.property(phrase, (text) => {
        expect(wellFormed(faultsOf(text)), text).toBe(pattern.test(text));
      }),
      { numRuns: 3000 },
    );
  });

  test('whatever the text, a fault lies inside it and the reading ends', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60, unit: 'binary' }), (text) => {
        for (const fault of parseAction(text, names).faults) {
          expect(fault.offset).toBeGreaterThanOrEqual(0);
          expect(fault.offset).toBeLessThanOrEqual(text.length);
        }
      }),
    );
  });
});
