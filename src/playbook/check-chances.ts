import type { ChanceResult } from './chance-schema.ts';
import { isDay } from './check-practices.ts';
import type { JsonPath } from './json/json-node.ts';
import type { Report } from './report.ts';
import type { Chance, Playbook } from './schema.ts';

/**
 * Says where a man-up that was written down contradicts itself. What it names and the playbook no longer has is no fault: it was so when it was
 * played.
 */
export function checkChances(playbook: Playbook, report: Report): void {
  for (const [at, chance] of (playbook.chances ?? []).entries()) {
    const path = ['chances', at];
    checkCounts(chance, path, report);
    checkShares(chance, path, report);
    checkMarks(chance, path, report);
  }
}

/** Results in which the last thing that happened is a shot. */
export const shotResults: ReadonlySet<ChanceResult> = new Set(['goal', 'saved', 'wide', 'pipe', 'blocked']);

function checkCounts({ date, result, shots, onTarget }: Chance, path: JsonPath, report: Report): void {
  if (date !== undefined && !isDay(date))
    report.add('chance-date', [...path, 'date'], `There is no ${date} in the calendar. Write the day as YYYY-MM-DD.`);
  if (shots === 0 && shotResults.has(result))
    report.add(
      'chance-counts',
      [...path, 'shots'],
      'It ends in a shot, and its shots are 0. Count that shot, or leave "shots" out.',
    );
  else if (shots !== undefined && onTarget !== undefined && onTarget > shots)
    report.add(
      'chance-counts',
      [...path, 'onTarget'],
      `There are ${counted(onTarget, 'shot')} on goal, and ${counted(shots, 'shot')} in all.`,
    );
}

/** Shares are written with two or three digits: what they are off by when each was rounded. */
const roundedShares = 0.02;

function checkShares(chance: Chance, path: JsonPath, report: Report): void {
  const { expected } = chance;
  for (const key of ['belief', 'byMarks'] as const) {
    const sum = Object.values(chance[key] ?? {}).reduce((all, share) => all + share, 0);
    if (sum > 1 + roundedShares)
      report.add(
        'chance-counts',
        [...path, key],
        `The shares of the schemes add up to ${Number(sum.toFixed(2))}, above 1.`,
      );
  }
  if (expected !== undefined && !(expected.low <= expected.goals && expected.goals <= expected.high))
    report.add(
      'chance-counts',
      [...path, 'expected'],
      'The goals that were expected are not between "low" and "high".',
    );
}

function checkMarks({ marks }: Chance, path: JsonPath, report: Report): void {
  for (const [at, { ball, holder, defenders, names }] of (marks ?? []).entries()) {
    const here = [...path, 'marks', at];
    if (ball === undefined && holder === undefined)
      report.add(
        'chance-marks',
        here,
        'The mark does not say where the ball is. Write "ball" with a place, or "holder" with a spot.',
      );
    if (names !== undefined && names.length !== defenders.length)
      report.add(
        'chance-marks',
        [...here, 'names'],
        `There are ${counted(names.length, 'name')} for ${counted(defenders.length, 'defender')}. Write one for each, or leave them out.`,
      );
  }
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}
