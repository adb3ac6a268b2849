import type { PlayReport } from '../engine/index.ts';
import type { Conditions } from './conditions.ts';
import { shellCommand } from './repeat-command.ts';

/** The last lines of every run: what gives the same numbers again, and what they depend on. */
export function repeatLines(
  program: string,
  command: readonly string[],
  conditions: Conditions,
  reports: readonly PlayReport[],
): string {
  const { side, trials, seed, level } = conditions;
  const [first] = reports;
  const words = [...command, '--side', side, '--seed', String(seed)];
  if (trials !== null) words.push('--trials', String(trials));
  if (first !== undefined) words.push('--penalty', String(first.penalty));
  if (level !== null) words.push('--level', level);
  const hashes = [...new Set(reports.map((report) => report.inputHash))].join(', ');
  return `Same numbers again: ${program} ${shellCommand(words)}\nEngine ${first?.engine ?? '-'}, seed ${seed}, input ${hashes}.\n`;
}
