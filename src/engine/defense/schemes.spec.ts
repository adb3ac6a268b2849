import { describe, expect, test } from 'vitest';
import { schemeById, schemeList, schemes, schemesFor } from './schemes.ts';

describe('schemes', () => {
  test.each(Object.entries(schemes))('%s is filed under its own id', (key, scheme) => {
    expect(scheme.id).toBe(key);
    expect(schemeById(key)).toBe(scheme);
  });

  test.each(schemeList)(
    '$id names its men, gives each a home in front of the goal, and its short sticks are among them',
    (scheme) => {
      expect(scheme.names).toHaveLength(scheme.defenders);
      expect(new Set(scheme.names).size).toBe(scheme.defenders);
      expect(scheme.home).toHaveLength(2 * scheme.defenders);
      for (let i = 0; i < scheme.defenders; i++) {
        expect(Math.hypot(scheme.home[2 * i]!, scheme.home[2 * i + 1]!)).toBeLessThan(scheme.extends + 0.5);
        expect(scheme.home[2 * i + 1]!).toBeGreaterThan(0);
      }
      for (const short of scheme.shortSticks) expect(scheme.names[short]).toBeDefined();
      expect(scheme.notes.summary).toMatch(/\.$/);
      expect(scheme.notes.leaves).toMatch(/\.$/);
    },
  );

  test.each([
    [6, 1],
    [5, 9],
    [4, 1],
    [3, 1],
    [2, 0],
  ])('for %i defenders there are %i', (defenders, count) => {
    expect(schemesFor(defenders)).toHaveLength(count);
  });

  test.each(['', 'zone', 'constructor', '__proto__', 'toString'])('knows no scheme called "%s"', (id) => {
    expect(schemeById(id)).toBeUndefined();
  });
});
