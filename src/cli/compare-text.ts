import { compareTallies, type Interval, type PlayReport, type Tally } from '../engine/index.ts';
import { perChance, percent } from '../render/index.ts';
import type { OpponentWhole } from './opponent-whole.ts';
import type { ReportNames } from './report-names.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** A play's report with the tallies it was made of, scheme by scheme. */
export interface ComparedPlay {
  readonly report: PlayReport;
  readonly tallies: readonly Tally[];
  /** Against the opponent who plays these schemes, all of them by weight. */
  readonly whole?: OpponentWhole;
}

/** Plays that fit side by side in 80 columns beside the schemes' names; more go into tables below one another. */
const playsAcross = 4;

/** Plays against schemes: a table of goals a chance, with half the interval's width, and what to call against what. */
export function compareText(plays: readonly ComparedPlay[], names: readonly ReportNames[]): string {
  const parts: string[] = [];
  for (let first = 0; first < plays.length; first += playsAcross) {
    parts.push(matrix(plays.slice(first, first + playsAcross), names.slice(first, first + playsAcross)));
  }
  return [...parts, wrapParagraph(callSentence(plays, names), tableWidth)].join('\n\n');
}

function matrix(plays: readonly ComparedPlay[], names: readonly ReportNames[]): string {
  const reports = plays.map(({ report }) => report);
  const opponent = plays[0]?.whole;
  const schemes = reports[0]?.results.map((result) => result.scheme) ?? [];
  const rows = schemes.map((scheme, row) => [
    `${names[0]?.schemes[scheme] ?? scheme}${opponent === undefined ? '' : `, ${percent(opponent.shares[row] ?? 0)}`}`,
    ...reports.map((report) => cell(report, row)),
  ]);
  const mean = (report: PlayReport): number =>
    report.results.reduce((sum, result) => sum + result.goalsPerChance.mean, 0) / Math.max(1, report.results.length);
  return formatTable(
    [
      { title: 'goals a chance', align: 'left', flexible: true },
      ...reports.map((report) => ({ title: report.play, align: 'right', flexible: true }) as const),
    ],
    [
      ...rows,
      opponent === undefined ? ['mean of all', ...reports.map((report) => perChance(mean(report)))] : wholeRow(plays),
    ],
  );
}

function wholeRow(plays: readonly ComparedPlay[]): readonly string[] {
  const cells = plays.map(({ whole }) => (whole === undefined ? '-' : withHalf(whole.goalsPerChance)));
  return [`${plays[0]?.whole?.name} by weight`, ...cells];
}

function cell(report: PlayReport, row: number): string {
  const goals = report.results[row]?.goalsPerChance;
  if (goals === undefined) return '-';
  return withHalf(goals);
}

function withHalf(goals: Interval): string {
  return `${perChance(goals.mean)} ±${perChance((goals.high - goals.low) / 2)}`;
}

function callSentence(plays: readonly ComparedPlay[], names: readonly ReportNames[]): string {
  const meaning =
    'After ± stands half of the 95 % interval. Plays are compared man-up by man-up with the same luck, which tells them ' +
    'apart sooner than the intervals do.';
  // One play has no rival, but its schemes are read against one another all the same.
  if (plays.length < 2) return `${meaning} Where two numbers are nearer than their ± the gap may be luck.`;
  const calls = new Map<string, string[]>();
  for (const [row, result] of (plays[0]?.report.results ?? []).entries()) {
    const call = bestCall(row, plays, names);
    calls.set(call, [...(calls.get(call) ?? []), names[0]?.schemes[result.scheme] ?? result.scheme]);
  }
  const sentences = [...calls].map(
    ([call, schemes]) => `${call} against ${schemes.join('; ')}${call === unclear ? luck : ''}.`,
  );
  return `${sentences.join(' ')} ${meaning}`;
}

function bestCall(row: number, plays: readonly ComparedPlay[], names: readonly ReportNames[]): string {
  const mean = (play: number): number => plays[play]?.report.results[row]?.goalsPerChance.mean ?? 0;
  const [best = 0, ...others] = [...plays.keys()].sort((a, b) => mean(b) - mean(a));
  const clear = others.every((other) => isBetter(plays[best]?.tallies[row], plays[other]?.tallies[row]));
  return clear ? `Call ${names[best]?.play ?? plays[best]?.report.play}` : unclear;
}

const unclear = 'No play is clearly best';
/** Said once, behind the schemes of which it is true. */
const luck = ': there the gaps may be luck, and more --trials would tell';

/** Whether the whole interval of the difference lies above zero. */
function isBetter(one: Tally | undefined, other: Tally | undefined): boolean {
  return one !== undefined && other !== undefined && compareTallies(one, other).difference.low > 0;
}
