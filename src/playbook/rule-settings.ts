import { type RuleCode, ruleCodes, rulesToConfirm, usualRuleCode } from '../engine/index.ts';
import type { Playbook } from './schema.ts';

type ShotClock = NonNullable<RuleCode['shotClock']['value']>;

/** A value that a playbook may set in place of its rule code's own: a number, yes or no, or null for "there is none". */
export type RuleValue = number | boolean | null;

/** The rule code that a playbook's team plays by: the named one or that of its level, with the playbook's own values in it. */
export function ruleCodeOf(playbook: Pick<Playbook, 'team' | 'settings'>): RuleCode {
  const { level, ruleCode } = playbook.team;
  let code = ruleCode === undefined ? usualRuleCode(level) : ruleCodes[ruleCode];
  for (const [path, value] of Object.entries(playbook.settings?.rules ?? {})) code = withRule(code, path, value);
  return code;
}

/** Paths of the rules that a playbook can set, such as `penalties.goalReleases`, with the values that the code gives. */
export function settableRules(code: RuleCode): ReadonlyMap<string, RuleValue> {
  const found = new Map<string, RuleValue>();
  collect(code, '', found);
  return found;
}

/** Rule values on which something depends: places and drawings, the test's penalty, how a chance runs. The others are on record only. */
export const rulesInUse: ReadonlySet<string> = new Set([
  'markings.halfWidth',
  'markings.goalToEndLine',
  'markings.goalToRestraining',
  'markings.goalToMidfield',
  'markings.boxHalfWidth',
  'markings.creaseRadius',
  'markings.goalWidth',
  'markings.goalDepth',
  'penalties.playedShort',
  'penalties.technical',
  'penalties.goalReleases',
  'shotClock',
]);

/** The rules of a code that should be confirmed in a rulebook: those that a playbook can set and on which something depends. */
export function openRules(
  code: RuleCode,
): readonly { readonly path: string; readonly value: RuleValue; readonly others: readonly RuleValue[] }[] {
  const settable = settableRules(code);
  return rulesToConfirm(code)
    .filter(({ path }) => settable.has(path) && rulesInUse.has(path))
    .map(({ path, rule }) => ({ path, value: settable.get(path)!, others: (rule.others ?? []).filter(isRuleValue) }));
}

function collect(part: object, path: string, found: Map<string, RuleValue>): void {
  for (const [key, value] of Object.entries(part)) {
    if (typeof value !== 'object' || value === null) continue;
    const here = path === '' ? key : `${path}.${key}`;
    if (here === clockPath) found.set(here, (part as RuleCode).shotClock.value?.afterPenalty.atOrBelow ?? null);
    else if (!('confirmed' in value)) collect(value, here, found);
    else if (isRuleValue(value.value)) found.set(here, value.value);
  }
}

function isRuleValue(value: unknown): value is RuleValue {
  return typeof value === 'number' || typeof value === 'boolean' || value === null;
}

/** The shot clock is several numbers in a code; a playbook sets the one that counts after a penalty. */
const clockPath = 'shotClock';

function clockOf(value: RuleValue): ShotClock | null {
  if (typeof value !== 'number') return null;
  return { seconds: value, afterPenalty: { threshold: value, atOrBelow: value, above: value } };
}

/** The code with one value replaced, and confirmed by the coach who set it. An unknown path changes nothing. */
function withRule(code: RuleCode, path: string, value: RuleValue): RuleCode {
  if (!settableRules(code).has(path)) return code;
  return replaceAt(code, path.split('.'), path === clockPath ? clockOf(value) : value) as RuleCode;
}

function replaceAt(part: object, path: readonly string[], value: RuleValue | ShotClock): object {
  const [key, ...rest] = path;
  if (key === undefined) return { value, source: 'set in the playbook', confirmed: true };
  return { ...part, [key]: replaceAt((part as Record<string, object>)[key]!, rest, value) };
}
