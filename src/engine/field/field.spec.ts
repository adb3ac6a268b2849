import { describe, expect, it } from 'vitest';
import { levels } from '../people/athlete.ts';
import { feet, metres, toMetres } from '../units.ts';
import { landmarksOf } from './landmarks.ts';
import { menOnField } from './men-on-field.ts';
import { type RuleCode, ruleCodeIds } from './rule-code.ts';
import { ruleCodes, rulesToConfirm, usualRuleCode } from './rule-codes.ts';

const all = Object.values(ruleCodes);

describe('the catalogue of rule codes', () => {
  it('holds every id under its own name', () => {
    expect(Object.keys(ruleCodes)).toEqual([...ruleCodeIds]);
    for (const [key, code] of Object.entries(ruleCodes)) expect(code.id).toBe(key);
  });

  it('names a source for every value, and other values only where it asks to confirm', () => {
    const visit = (part: object): number =>
      Object.values(part).reduce((count: number, value) => {
        if (typeof value !== 'object' || value === null) return count;
        if (!('confirmed' in value)) return count + visit(value);
        expect(value.source.length).toBeGreaterThan(3);
        if (value.confirmed) expect(value.others).toBeUndefined();
        return count + 1;
      }, 0);
    for (const code of all) expect(visit(code)).toBe(30);
  });

  it.each(all)('$id lays its lines out in order', ({ markings }) => {
    expect(markings.goalWidth.value / 2).toBeLessThan(markings.creaseRadius.value);
    expect(markings.creaseRadius.value).toBeLessThan(markings.goalToEndLine.value);
    expect(markings.goalToRestraining.value).toBeLessThan(markings.goalToMidfield.value);
    expect(markings.boxHalfWidth.value ?? 0).toBeLessThan(markings.halfWidth.value);
  });

  it('has a code for every level', () => {
    for (const level of levels) expect(usualRuleCode(level)).toBeDefined();
    expect(usualRuleCode('14U').id).toBe('usal14U');
  });
});

describe('who is a man up', () => {
  // uslacrosse.org 2020: at 8U and 10U teams are never man-down or man-up.
  it.each(all.map((code) => [code.id, code] as const))('%s', (id, code) => {
    const young = id === 'usal8U' || id === 'usal10U';
    expect(code.penalties.playedShort.value).toBe(!young);
    expect(code.note !== undefined).toBe(young);
  });
});

describe('values that sources give', () => {
  it.each([
    ['NCAA: between goals 80 yd (britannica)', 2 * ruleCodes.ncaa.markings.goalToMidfield.value, 80],
    ['NCAA: field 110 yd (NCAA 2025 Rule 1)', lengthOf(ruleCodes.ncaa), 110],
    ['NFHS: field 110 yd (galaxref.com)', lengthOf(ruleCodes.nfhs), 110],
    ['box 35 yd deep (trumarkathletics.com)', boxDepth(ruleCodes.ncaa), 35],
    ['crease of 9 ft is 3 yd', ruleCodes.ncaa.markings.creaseRadius.value, feet(9)],
    [
      'World: end line 12 m behind (worldlacrosse.sport)',
      toMetres(ruleCodes.worldLacrosse.markings.goalToEndLine.value),
      12,
    ],
    ['World: field 100 m at most (Rule 1.1)', toMetres(lengthOf(ruleCodes.worldLacrosse)), 100],
    ['World: -13.12 yd', landmarksOf(ruleCodes.worldLacrosse.markings).endLine, metres(-12)],
  ])('%s', (_name, ours, theirs) => {
    expect(ours).toBeCloseTo(theirs, 9);
  });

  it('leave the points where bodies disagree to the coach', () => {
    const open = (code: RuleCode) => rulesToConfirm(code).map(({ path }) => path);
    expect(open(ruleCodes.worldLacrosse)).toEqual(
      expect.arrayContaining(['markings.creaseRadius', 'penalties.goalReleases']),
    );
    expect(open(ruleCodes.usal14U)).toContain('penalties.goalReleases');
    expect(open(ruleCodes.usal10U)).toContain('counts.longCrosses');
    expect(open(ruleCodes.ncaa)).toContain('flagDown.goalWipesTechnical');
    expect(open(ruleCodes.nfhs)).not.toContain('penalties.technical');
  });
});

function lengthOf({ markings }: RuleCode): number {
  return 2 * (markings.goalToMidfield.value + markings.goalToEndLine.value);
}

function boxDepth({ markings }: RuleCode): number {
  return markings.goalToRestraining.value + markings.goalToEndLine.value;
}

describe('menOnField', () => {
  // Derived from the offside counts: at most 6 in the attacking end and 7 in the defending end, men in the box counted
  // (inlaxref.org), never more than 3 short (umloa.org).
  it.each([
    [0, 0, 6, 6, 0],
    [1, 0, 5, 6, 0],
    [2, 0, 4, 6, 0],
    [3, 0, 3, 6, 0],
    [1, 1, 5, 5, 0],
    [4, 0, 3, 6, 1],
    [6, 0, 3, 6, 3],
    [2, 1, 4, 5, 0],
  ])('%s down against %s down: %s defenders, %s attackers, %s wait', (down, other, defenders, attackers, waiting) => {
    expect(menOnField(ruleCodes.nfhs, down, other)).toEqual({ defenders, attackers, waiting });
  });

  it.each([-1, 0.5, Number.NaN])('refuses %s men', (men) => {
    expect(() => menOnField(ruleCodes.nfhs, men, 0)).toThrow(RangeError);
    expect(() => menOnField(ruleCodes.nfhs, 0, men)).toThrow(RangeError);
  });
});

describe('landmarksOf', () => {
  it('gives the coordinates of the classic field', () => {
    expect(landmarksOf(ruleCodes.ncaa.markings)).toEqual({
      leftPost: { x: -1, y: 0 },
      rightPost: { x: 1, y: 0 },
      netPeg: { x: 0, y: -7 / 3 },
      endLine: -15,
      restrainingLine: 20,
      midfieldLine: 40,
      sideline: 30,
      boxSide: 20,
      creaseRadius: 3,
      gate: { x: 30, y: 40 },
      x: { x: 0, y: -9 },
    });
  });

  it('puts the gate on the side of the benches', () => {
    expect(landmarksOf(ruleCodes.ncaa.markings, -1).gate.x).toBe(-30);
  });
});
