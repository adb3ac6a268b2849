import { describe, expect, test } from 'vitest';
import { parseAction } from './parse-action.ts';
import { parseDuty } from './parse-duty.ts';
import type { PlayNames } from './play-names.ts';

const names: PlayNames = {
  spots: new Map([
    ['P', { x: 0, y: 14 }],
    ['TR', { x: 9, y: 12 }],
    ['TL', { x: -9, y: 12 }],
    ['C', { x: 0, y: 6 }],
    ['X', { x: 0, y: -5 }],
  ]),
  beats: new Set(),
  placeFault: () => undefined,
};

describe('parseAction', () => {
  test.each([
    ['TR pass TL', { kind: 'pass', by: 'TR', to: 'TL', style: 'adjacent' }],
    ['TR skip X', { kind: 'pass', by: 'TR', to: 'X', style: 'skip' }],
    ['X feed C', { kind: 'pass', by: 'X', to: 'C', style: 'feed' }],
    ['P carry to 5,13', { kind: 'carry', by: 'P', path: [{ x: 5, y: 13 }] }],
    ['  P   carry  to  5 , -13.5 ', { kind: 'carry', by: 'P', path: [{ x: 5, y: -13.5 }] }],
    [
      'P cut via 3,9 via 6,2 to X',
      {
        kind: 'run',
        run: 'cut',
        by: 'P',
        path: [
          { x: 3, y: 9 },
          { x: 6, y: 2 },
          { x: 0, y: -5 },
        ],
        go: 'now',
      },
    ],
    ['C pop to 6,9', { kind: 'run', run: 'pop', by: 'C', path: [{ x: 6, y: 9 }], go: 'now' }],
    ['TL sneak to -4,2 when open', { kind: 'run', run: 'sneak', by: 'TL', path: [{ x: -4, y: 2 }], go: 'whenOpen' }],
    ['X backup to 0,-12', { kind: 'run', run: 'backUp', by: 'X', path: [{ x: 0, y: -12 }], go: 'now' }],
    ['P getback to 0,25', { kind: 'run', run: 'getBack', by: 'P', path: [{ x: 0, y: 25 }], go: 'now' }],
    ['C pick at 3,6 on TR', { kind: 'pick', by: 'C', at: { x: 3, y: 6 }, on: 'TR' }],
    ['C seal on TR', { kind: 'seal', by: 'C', on: 'TR' }],
    ['TR fake TL', { kind: 'fake', by: 'TR', toward: 'TL' }],
    ['TR hold 0.5', { kind: 'hold', by: 'TR', seconds: 0.5 }],
    ['TR step to 5,10', { kind: 'stepIn', by: 'TR', to: { x: 5, y: 10 } }],
    ['TR step to -0,10', { kind: 'stepIn', by: 'TR', to: { x: 0, y: 10 } }],
    ['TR shoot', { kind: 'shot', by: 'TR' }],
  ])('%s', (text, value) => {
    expect(parseAction(text, names)).toStrictEqual({ value, faults: [] });
  });

  // [phrase, column from 1, code, part of the sentence]
  test.each([
    ['', 1, 'action-syntax', 'Nothing is written here; the spot of the man who acts should come first'],
    ['TR', 3, 'action-syntax', 'a verb'],
    ['TR pss TL', 4, 'action-syntax', '"pass" should stand where "pss" stands'],
    ['TR PASS TL', 4, 'action-syntax', '"pass" should stand where "PASS" stands'],
    ['TR pass', 8, 'action-syntax', '"TR pass": pass to whom?'],
    ['TR pass TL now', 12, 'action-syntax', '"now" is too much'],
    ['tr pass TL', 1, 'action-syntax', 'in capital letters'],
    ['TR pass TQ', 9, 'spot-unknown', 'Did you mean'],
    ['C pop 6,9', 7, 'action-syntax', '"to" or "via"'],
    ['C pop via 3,4', 14, 'action-syntax', 'run to where?'],
    ['C pop to 6 9', 12, 'action-syntax', 'a comma'],
    ['C pop to 6.,9', 10, 'action-syntax', 'a place'],
    ['C pop to 6,9 when', 18, 'action-syntax', '"open"'],
    ['C pick on TR', 8, 'action-syntax', '"at"'],
    ['C pick at 3,6 on C', 18, 'self-target', 'C cannot'],
    ['TR hold long', 9, 'action-syntax', 'a number of seconds'],
    ['TR hold -1', 9, 'seconds-range', 'more than 0'],
    ['TR \u2192 TL', 4, 'action-syntax', 'should stand where "\u2192" stands'],
  ])('%j is wrong at column %i', (text, column, code, says) => {
    const { value, faults } = parseAction(text, names);
    expect(value).toBeUndefined();
    expect(faults.map((fault) => [fault.offset + 1, fault.code])).toEqual([[column, code]]);
    expect(faults[0]!.message).toContain(says);
  });

  // [phrase, how it is read on]
  test.each([
    ['TR passes TL', { kind: 'pass', by: 'TR', to: 'TL', style: 'adjacent' }],
    ['tr pass LT', { kind: 'pass', by: 'TR', to: 'TL', style: 'adjacent' }],
    ['TR pass', { kind: 'pass', by: 'TR', to: '?', style: 'adjacent' }],
    ['TR pass TR', { kind: 'pass', by: 'TR', to: '?', style: 'adjacent' }],
    ['Q pass TL', { kind: 'pass', by: '?', to: 'TL', style: 'adjacent' }],
    ['TR hold 99', { kind: 'hold', by: 'TR', seconds: 20 }],
    ['TR yeets TL', undefined],
  ])('%j is wrong, and read on as it was meant', (text, guess) => {
    const reading = parseAction(text, names);
    expect(reading.value).toBeUndefined();
    expect(reading.guess).toEqual(guess);
    expect(reading.by).toBe(text.startsWith('Q') ? '?' : 'TR');
  });

  test('finds every wrong name of a phrase', () => {
    expect(parseAction('QA pick at QB on QC', names).faults.map((fault) => fault.offset)).toEqual([0, 11, 17]);
  });
});

describe('parseDuty', () => {
  const scheme = { men: new Set(['tr', 'c']), spots: new Set(['TR', 'TL', 'C']) };
  test.each([
    ['tr ball', { by: 'tr', own: { duty: 'ball' } }],
    ['tr man TR', { by: 'tr', own: { duty: 'man', who: 'TR' } }],
    ['tr split TR TL', { by: 'tr', own: { duty: 'split', who: ['TR', 'TL'] } }],
    ['c front crease', { by: 'c', own: { duty: 'front', who: 'crease' } }],
    ['c lock C', { by: 'c', own: { duty: 'lock', who: 'C' } }],
    ['tr lane TL', { by: 'tr', own: { duty: 'lane', who: 'TL' } }],
    ['tr pipe TL at -3,2', { by: 'tr', own: { duty: 'pipe', who: 'TL', at: [-3, 2] } }],
    ['c at 0,5', { by: 'c', own: { duty: 'place', at: [0, 5] } }],
  ])('%s', (text, value) => {
    expect(parseDuty(text, scheme)).toEqual({ value, faults: [] });
  });
});
