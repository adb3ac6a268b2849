import type { Level } from '../people/athlete.ts';
import { ncaa } from './ncaa.ts';
import { nfhs } from './nfhs.ts';
import type { Rule } from './rule.ts';
import type { RuleCode, RuleCodeId } from './rule-code.ts';
import { usal8U, usal10U, usal12U, usal14U } from './usal-youth.ts';
import { worldLacrosse } from './world-lacrosse.ts';

/** Every rule code by its id. */
export const ruleCodes: Readonly<Record<RuleCodeId, RuleCode>> = {
  nfhs,
  ncaa,
  worldLacrosse,
  usal14U,
  usal12U,
  usal10U,
  usal8U,
};

/**
 * The rule code that teams of a level usually play by. No professional rulebook was read: college rules stand in for it.
 */
export function usualRuleCode(level: Level): RuleCode {
  return ruleCodes[codeOfLevel[level]];
}

const codeOfLevel: Readonly<Record<Level, RuleCodeId>> = {
  '8U': 'usal8U',
  '10U': 'usal10U',
  '12U': 'usal12U',
  '14U': 'usal14U',
  highSchool: 'nfhs',
  college: 'ncaa',
  pro: 'ncaa',
};

/** A value of a code that the coach should confirm in his rulebook. */
export interface OpenRule {
  /** Where it stands in the code, such as `penalties.goalReleases`. */
  readonly path: string;
  readonly rule: Rule<unknown>;
}

/** Every value of a code that was not confirmed, in the order in which the code holds them. */
export function rulesToConfirm(code: RuleCode): readonly OpenRule[] {
  return openRules(code, '');
}

function openRules(part: object, path: string): readonly OpenRule[] {
  return Object.entries(part).flatMap(([key, value]) => {
    if (typeof value !== 'object' || value === null) return [];
    const place = path === '' ? key : `${path}.${key}`;
    if (isRule(value)) return value.confirmed ? [] : [{ path: place, rule: value }];
    return openRules(value, place);
  });
}

function isRule(value: object): value is Rule<unknown> {
  return 'confirmed' in value && 'source' in value;
}
