import type { PlayReport, SchemeReport } from '../engine/index.ts';
import { percent } from '../render/index.ts';
import { type ReportNames, schemeName } from './report-names.ts';
import { formatTable } from './table.ts';

/** How often the play and each of its steps began against each scheme, and how many passes were its own. */
export function playRunTable(report: PlayReport, names: ReportNames): string {
  if (report.results.length === 0) return '';
  return formatTable(
    [
      { title: 'against', align: 'left', flexible: true },
      { title: 'begins', align: 'right' },
      { title: 'steps begun, in 100 man-ups', align: 'left', flexible: true },
      { title: 'its passes', align: 'right' },
    ],
    report.results.map((result) => [
      schemeName(result.scheme, names),
      percent(result.play.begun.mean),
      stepsCell(result),
      percent(result.play.playPasses),
    ]),
  );
}

// As a funnel, whatever the order in the file; steps that begin equally often keep that order.
function stepsCell({ play }: SchemeReport): string {
  return [...play.beats]
    .sort((a, b) => b.share - a.share)
    .map(({ id, share }) => `${id} ${inHundred(share)}`)
    .join(', ');
}

/** The table in words: where the play begins most and least, and what became of its last steps. */
export function playRunSentence(report: PlayReport, names: ReportNames): string {
  const sorted = [...report.results].sort((a, b) => b.play.begun.mean - a.play.begun.mean);
  const [most] = sorted;
  const least = sorted.at(-1);
  if (most === undefined || least === undefined) return '';
  const rest = `${ownPasses(report)} ${neverBegun(report)}`.trim();
  const often = (result: SchemeReport): string =>
    `in ${inHundred(result.play.begun.mean)} of 100 man-ups against ${schemeName(result.scheme, names)}`;
  const begins = `${names.play} begins ${often(most)}`;
  return most === least ? `${begins}. ${rest}` : `${begins}, the most, and ${often(least)}, the least. ${rest}`;
}

function ownPasses({ results }: PlayReport): string {
  const shares = results.map(({ play }) => play.playPasses);
  const [least, most] = [Math.min(...shares), Math.max(...shares)].map((share) => percent(share));
  const range = least === most ? most : `${least} to ${most}`;
  return `Its passes are those that it or one of its reads asks for, ${range} of all; the rest look round, reset, or go to who is open.`;
}

/** A step that no man-up came to is likelier a slip in the file than bad luck. */
function neverBegun({ results }: PlayReport): string {
  const ids = (results[0]?.play.beats ?? []).map(({ id }) => id);
  const never = ids.filter((_, beat) => results.every(({ play }) => play.beats[beat]?.share === 0));
  if (never.length === 0) return '';
  return `${never.map((id) => `"${id}"`).join(', ')} never began.`;
}

function inHundred(share: number): string {
  const whole = Math.round(share * 100);
  // Seldom is not never, and not quite always is not always.
  if (whole === 0 && share > 0) return 'under 1';
  return whole === 100 && share < 1 ? 'over 99' : String(whole);
}
