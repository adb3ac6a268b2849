import type { RuleCode } from '../engine/index.ts';
import { nearestName } from './language/nearest-name.ts';
import type { Report } from './report.ts';
import { openRules, type RuleValue, ruleCodeOf, settableRules } from './rule-settings.ts';
import type { Playbook } from './schema.ts';

/** Says which rule values cannot be set, which the coach should confirm, and where no team is ever a man up. */
export function checkSettings(playbook: Playbook, report: Report): void {
  const code = ruleCodeOf(playbook);
  checkRules(playbook, report);
  tellManUp(playbook, code, report);
  tellOpenRules(playbook, code, report);
}

/** Bounds of a number that a rule can be: yards, seconds or men. */
const smallest = 0;
const largest = 300;

function checkRules(playbook: Playbook, report: Report): void {
  const settable = settableRules(ruleCodeOf({ team: playbook.team }));
  for (const [path, value] of Object.entries(playbook.settings?.rules ?? {})) {
    const here = ['settings', 'rules', path];
    const ours = settable.get(path);
    if (ours === undefined) {
      const near = nearestName(path, settable.keys());
      report.add(
        'rule-unknown',
        here,
        `No rule value is called "${path}".${near === undefined ? '' : ` Did you mean "${near}"?`} The values are ${[...settable.keys()].join(', ')}.`,
      );
    } else if (!fits(value, ours)) {
      report.add(
        'rule-unknown',
        here,
        `The rule value "${path}" is ${wordFor(ours)} in the rule code, and cannot be ${String(value)}.`,
      );
    }
  }
}

function fits(value: RuleValue, ours: RuleValue): boolean {
  if (typeof value === 'number' && (value < smallest || value > largest)) return false;
  // Where the code has no such thing, a number or yes or no may still say that the league has one.
  if (ours === null || value === null) return typeof ours !== 'boolean' && typeof value !== 'boolean';
  return typeof value === typeof ours;
}

function wordFor(value: RuleValue): string {
  return typeof value === 'boolean' ? 'true or false' : 'a number from 0 to 300';
}

function tellManUp({ team }: Playbook, code: RuleCode, report: Report): void {
  if (code.penalties.playedShort.value) return;
  report.add(
    'level-no-man-up',
    ['team', 'level'],
    `By the rules of ${code.name} no team is ever a man up or down in games: the player who fouls is replaced. Use these plays in practice at ${team.level}; confirm in your rulebook.`,
  );
}

function tellOpenRules({ team }: Playbook, code: RuleCode, report: Report): void {
  const open = openRules(code).map(({ path, value, others }) => {
    const also = others.length === 0 ? '' : ` (or ${others.map(shown).join(', ')})`;
    return `${path} ${shown(value)}${also}`;
  });
  if (open.length === 0) return;
  report.add(
    'rule-unconfirmed',
    ['team', team.ruleCode === undefined ? 'level' : 'ruleCode'],
    `These values of ${code.name} could not be confirmed: ${open.join('; ')}. Confirm in your rulebook, and write them into "settings", "rules".`,
  );
}

function shown(value: RuleValue): string {
  if (value === null) return 'none';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return String(Math.round(value * 100) / 100);
}
