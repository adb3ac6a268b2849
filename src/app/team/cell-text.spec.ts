import { describe, expect, it } from 'vitest';
import {
  printHeight,
  printOnGoal,
  printReadings,
  type Read,
  readGrade,
  readHeight,
  readJersey,
  readOnGoal,
  readReadings,
} from './cell-text.ts';

const valueRead = <T>(read: Read<T>): T | 'problem' => (read.kind === 'read' ? read.value : 'problem');

describe('a jersey number', () => {
  it.each([
    ['7', 7],
    ['00', 0],
    [' #12 ', 12],
    ['999', 999],
    ['', 'problem'],
    ['1000', 'problem'],
    ['1x', 'problem'],
    ['1.5', 'problem'],
    ['-1', 'problem'],
  ] as const)('%j is %s', (text, value) => expect(valueRead(readJersey(text))).toBe(value));

  it('that is none is told with what was typed', () => {
    expect(readJersey('eleven')).toMatchObject({ kind: 'problem', text: expect.stringContaining('“eleven”') });
  });
});

describe('a grade', () => {
  it.each([
    ['', undefined],
    ['1', 1],
    ['3.5', 3.5],
    ['3,5', 3.5],
    ['5', 5],
    ['0', 'problem'],
    ['5.5', 'problem'],
    ['good', 'problem'],
  ] as const)('%j is %s', (text, value) => expect(valueRead(readGrade(text))).toBe(value));
});

describe('readings', () => {
  it.each([
    ['', 'speed', undefined],
    ['58 61 60', 'speed', [58, 61, 60]],
    ['58,61,60', 'speed', [58, 61, 60]],
    ['58,61', 'speed', [58, 61]],
    ['58, 61; 60', 'speed', [58, 61, 60]],
    ['58,5', 'speed', [58.5]],
    ['58 mph 61 mph', 'speed', [58, 61]],
    ['2,95 3,1', 'seconds', [2.95, 3.1]],
    ['2.95s', 'seconds', [2.95]],
    ['2,95', 'seconds', [2.95]],
    ['2,95 s 3,1 s', 'seconds', [2.95, 3.1]],
    ['2.95,3.1', 'seconds', [2.95, 3.1]],
    ['2,95,3,1', 'seconds', 'problem'],
    ['96,5 km/h', 'speed', [59.96]],
    ['31,33', 'count', [31, 33]],
    ['3o', 'count', 'problem'],
    ['0', 'speed', 'problem'],
    ['-3', 'seconds', 'problem'],
    ['2000', 'count', 'problem'],
  ] as const)('%j as %s are %j', (text, unit, value) => {
    expect(valueRead(readReadings(text, unit, 'mph'))).toEqual(value);
  });

  it('in km/h are kept in mph: 60 mph are 96.56 km/h (the mile is 1.609344 km by definition)', () => {
    expect(valueRead(readReadings('96.56', 'speed', 'kmh'))).toEqual([60]);
    expect(valueRead(readReadings('60 mph', 'speed', 'kmh'))).toEqual([60]);
    expect(valueRead(readReadings('96.56km/h', 'speed', 'mph'))).toEqual([60]);
    expect(printReadings([60], 'speed', 'kmh')).toBe('96.6');
  });

  it('in km/h to a tenth come back as they were typed', () => {
    for (let tenths = 300; tenths < 1800; tenths++) {
      const text = String(tenths / 10);
      const kept = valueRead(readReadings(text, 'speed', 'kmh')) as readonly number[];
      expect(printReadings(kept, 'speed', 'kmh')).toBe(text);
    }
  });

  it('are 50 at most', () => {
    expect(valueRead(readReadings('9 '.repeat(50), 'count', 'mph'))).toHaveLength(50);
    expect(valueRead(readReadings('9 '.repeat(51), 'count', 'mph'))).toBe('problem');
  });
});

describe('shots on goal', () => {
  it.each([
    ['34/50', { hits: 34, shots: 50 }],
    ['34 of 50', { hits: 34, shots: 50 }],
    ['34 50', { hits: 34, shots: 50 }],
    ['', undefined],
    ['51/50', 'problem'],
    ['0/0', 'problem'],
    ['34', 'problem'],
  ] as const)('%j are %j', (text, value) => expect(valueRead(readOnGoal(text))).toEqual(value));

  it('come back as they are printed', () => {
    expect(valueRead(readOnGoal(printOnGoal({ hits: 3, shots: 9 })))).toEqual({ hits: 3, shots: 9 });
  });
});

describe('a height', () => {
  it.each([
    ['178', 'cm', 178],
    ['178', 'ftIn', 178],
    ['1.78', 'cm', 178],
    ['1,78 m', 'ftIn', 178],
    // The inch is 2.54 cm by definition.
    ['5\'10"', 'ftIn', 177.8],
    ['5′10″', 'cm', 177.8],
    ['5 10', 'ftIn', 177.8],
    ['5-10', 'ftIn', 177.8],
    ['5 ft 10 in', 'ftIn', 177.8],
    ['6', 'ftIn', 182.9],
    ['70', 'ftIn', 177.8],
    ['70 in', 'cm', 177.8],
    ['', 'cm', undefined],
    ['17', 'cm', 'problem'],
    ['5 12', 'ftIn', 'problem'],
    ['tall', 'cm', 'problem'],
    ['300', 'cm', 'problem'],
  ] as const)('%j in %s is %s', (text, unit, value) => expect(valueRead(readHeight(text, unit))).toBe(value));

  it('in feet and inches comes back as it is printed', () => {
    for (let whole = 48; whole < 84; whole++) {
      const text = printHeight(whole * 2.54, 'ftIn');
      expect(valueRead(readHeight(text, 'ftIn'))).toBeCloseTo(whole * 2.54, 1);
    }
  });
});
