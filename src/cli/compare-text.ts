import type { PlayReport } from '../engine/index.ts';
import { perChance } from './number-text.ts';
import { isClearlyApart, type ReportNames } from './report-text.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** Plays that fit side by side in 80 columns beside the schemes' names; more go into tables below one another. */
const playsAcross = 4;

/** Plays against schemes: a table of goals a chance, with half the interval's width, and what to call against what. */
export function compareText(reports: readonly PlayReport[], names: readonly ReportNames[]): string {
  const parts: string[] = [];
  for (let first = 0; first < reports.length; first += playsAcross) {
    parts.push(matrix(reports.slice(first, first + playsAcross), names.slice(first, first + playsAcross)));
  }
  return [...parts, wrapParagraph(callSentence(reports, names), tableWidth)].join('\n\n');
}

function matrix(reports: readonly PlayReport[], names: readonly ReportNames[]): string {
  const schemes = reports[0]?.results.map((result) => result.scheme) ?? [];
  const rows = schemes.map((scheme, row) => [
    names[0]?.schemes[scheme] ?? scheme,
    ...reports.map((report) => cell(report, row)),
  ]);
  const mean = (report: PlayReport): number =>
    report.results.reduce((sum, result) => sum + result.goalsPerChance.mean, 0) / Math.max(1, report.results.length);
  return formatTable(
    [
      { title: 'goals a chance', align: 'left', flexible: true },
      ...reports.map((report) => ({ title: report.play, align: 'right', flexible: true }) as const),
    ],
    [...rows, ['mean of all', ...reports.map((report) => perChance(mean(report)))]],
  );
}

function cell(report: PlayReport, row: number): string {
  const goals = report.results[row]?.goalsPerChance;
  if (goals === undefined) return '-';
  return `${perChance(goals.mean)} ±${perChance((goals.high - goals.low) / 2)}`;
}

function callSentence(reports: readonly PlayReport[], names: readonly ReportNames[]): string {
  const meaning =
    'After ± stands half of the 95 % interval: two plays that differ by less than that are not told apart yet.';
  if (reports.length < 2) return meaning;
  const calls = new Map<string, string[]>();
  for (const [row, result] of (reports[0]?.results ?? []).entries()) {
    const call = bestCall(row, reports, names);
    calls.set(call, [...(calls.get(call) ?? []), names[0]?.schemes[result.scheme] ?? result.scheme]);
  }
  const sentences = [...calls].map(([call, schemes]) => `${call} against ${schemes.join('; ')}.`);
  return `${sentences.join(' ')} ${meaning}`;
}

function bestCall(row: number, reports: readonly PlayReport[], names: readonly ReportNames[]): string {
  const sorted = [...reports.keys()].sort((a, b) => goalsOf(reports, b, row).mean - goalsOf(reports, a, row).mean);
  const [best = 0, second = 0] = sorted;
  const clear = isClearlyApart(goalsOf(reports, best, row), goalsOf(reports, second, row));
  const play = names[best]?.play ?? reports[best]?.play ?? '';
  return clear ? `Call ${play}` : 'No play is clearly best';
}

function goalsOf(
  reports: readonly PlayReport[],
  play: number,
  row: number,
): { mean: number; low: number; high: number } {
  return reports[play]?.results[row]?.goalsPerChance ?? { mean: 0, low: 0, high: 0 };
}
