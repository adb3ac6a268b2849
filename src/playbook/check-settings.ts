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

function tellOpenRules(playbook: Playbook, code: RuleCode, report: Report): void {
  const { team } = playbook;
  const open = openRules(code);
  if (open.length === 0) return;
  const differs = open.flatMap(({ path, others }) => others.map((other) => `"${path}": ${shown(other)}`));
  const books = differs.length === 0 ? '' : ` Some books have ${differs.join(', ')}.`;
  const count = open.length === 1 ? 'One rule value' : `${open.length} rule values`;
  const { target, lines } = pasteOf(playbook, open);
  report.add(
    'rule-unconfirmed',
    ['team', team.ruleCode === undefined ? 'level' : 'ruleCode'],
    `${count} of ${code.name} could not be confirmed in a current rulebook. Look in yours.${books} Then paste this ${target}, corrected where your book differs:`,
    undefined,
    lines.join('\n'),
  );
}

/** The open rules as lines of a playbook, and where in this one they belong. */
function pasteOf(
  { settings }: Playbook,
  open: readonly { readonly path: string; readonly value: RuleValue }[],
): { readonly target: string; readonly lines: readonly string[] } {
  const hasRules = Object.keys(settings?.rules ?? {}).length > 0;
  const values = open.map(
    ({ path, value }, i) => `"${path}": ${shown(value)}${hasRules || i < open.length - 1 ? ',' : ''}`,
  );
  if (settings?.rules !== undefined) return { target: 'right after "rules": {', lines: values };
  const comma = settings !== undefined && Object.keys(settings).length === 0 ? '' : ',';
  const rules = ['"rules": {', ...values.map((line) => `  ${line}`)];
  if (settings !== undefined) return { target: 'right after "settings": {', lines: [...rules, `}${comma}`] };
  return {
    target: 'right after the first { of the file',
    lines: ['"settings": {', ...rules.map((line) => `  ${line}`), '  }', '},'],
  };
}

/** As JSON has it; yards to two places. */
function shown(value: RuleValue): string {
  return JSON.stringify(typeof value === 'number' ? Math.round(value * 100) / 100 : value);
}
