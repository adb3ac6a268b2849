import { describe, expect, test } from 'vitest';
import { ruleCodeIds, ruleCodes } from '../engine/index.ts';
import { ruleCodeOf, rulesInUse, settableRules } from './rule-settings.ts';
import type { Team } from './schema.ts';

const team: Team = { name: 'T', level: 'highSchool', roster: [] };

describe('ruleCodeOf', () => {
  // [what the playbook sets, what the clock shows at the restart]
  test.each([
    [{}, null],
    [{ shotClock: 60 }, 60],
    [{ shotClock: null }, null],
  ])('%j gives a shot clock of %s', (rules, shows) => {
    const code = ruleCodeOf({ team, settings: { rules } });
    expect(code.shotClock.value?.afterPenalty.atOrBelow ?? null).toBe(shows);
  });

  test('a code that has a shot clock can be played without', () => {
    const college: Team = { ...team, level: 'college' };
    expect(ruleCodeOf({ team: college }).shotClock.value).not.toBeNull();
    expect(ruleCodeOf({ team: college, settings: { rules: { shotClock: null } } }).shotClock.value).toBeNull();
  });
});

test.each(ruleCodeIds)('%s has every rule that a playbook can set', (id) => {
  expect([...settableRules(ruleCodes[id]).keys()]).toEqual([...settableRules(ruleCodes.nfhs).keys()]);
  for (const rule of rulesInUse) expect(settableRules(ruleCodes[id]).has(rule)).toBe(true);
});
