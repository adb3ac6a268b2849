import { type Interval, leastReplays, type PlayReport, type SchemeReport, type TurnoverKind } from '../engine/index.ts';
import { count, counted, perChance, percent, tenth, turnoverNames, withInterval } from '../render/index.ts';
import { looksSentence, looksTable } from './looks-table.ts';
import type { OpponentWhole } from './opponent-whole.ts';
import { playRunSentence, playRunTable } from './play-run-text.ts';
import { type ReportNames, schemeName } from './report-names.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** One play against the schemes it was tested with, as tables of 80 columns with a sentence beside each. */
export function reportText(report: PlayReport, names: ReportNames, whole?: OpponentWhole): string {
  return [
    heading(report, names),
    summaryTable(report, names, whole),
    paragraph(wholeSentence(whole)),
    paragraph(summarySentence(report, names)),
    playRunTable(report, names),
    paragraph(playRunSentence(report, names)),
    looksTable(report, names),
    paragraph(looksSentence(report, names)),
    lossTable(report, names),
    paragraph(lossSentence(report, names)),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

/** What the columns mean; said once below all tables. */
export function howToRead(reports: readonly PlayReport[]): string {
  const results = reports.flatMap((report) => report.results);
  const watched = count(Math.max(0, ...results.map((result) => result.watched)));
  const replays = count(Math.max(0, ...results.flatMap(({ looks }) => looks.map((look) => look.replays))));
  return paragraph(
    'How to read this. Goals, shots and lost are per man-up; the true figure of this model lies in the brackets 95 times ' +
      'in 100. 1st shot: median, with half of all first shots in its brackets, after the whistle. Opens: share of ' +
      `the ${watched} man-ups watched for looks in which it was there at all. When: its median start and end after the play ` +
      'began. There: passes that arrive. Shot: goal odds of the shot it leads to at once. Worth: goals to be expected from ' +
      `then on, the mean of at most ${replays} replays in which it was taken; few: fewer than ${leastReplays} of them. Left by: ` +
      'whose man he was and by which duty; plan: the scheme leaves that man. *: a pass that the play or a read asks for. Below ' +
      'the best looks stand those that are not among them: opens, how often the pass was there when it was asked for; there, its ' +
      'best odds; and, last, the step it belongs to with the share of man-ups that came to it, or never. 0 % with good odds: it ' +
      'led to nothing better than going on.',
  );
}

/** `true` when two intervals have no number in common, so that the gap is more than luck. */
export function isClearlyApart(a: Interval, b: Interval): boolean {
  return a.low > b.high || b.low > a.high;
}

function heading(report: PlayReport, names: ReportNames): string {
  const { passes, skips, reads, movers } = report.complexity;
  const asks = [
    counted(passes, 'pass', 'passes'),
    counted(skips, 'skip'),
    counted(reads, 'read'),
    counted(movers, 'mover'),
  ];
  return [
    `${names.play} (${report.play}), ${report.side} side, ${report.penalty} s penalty`,
    paragraph(`It asks for ${asks.join(', ')}. Left and right are the offense's, looking in at the goal.`),
  ].join('\n');
}

function summaryTable(report: PlayReport, names: ReportNames, whole: OpponentWhole | undefined): string {
  const rows = report.results.map((result, i) => [
    whole === undefined
      ? schemeName(result.scheme, names)
      : `${schemeName(result.scheme, names)}, ${percent(whole.shares[i] ?? 0)}`,
    count(result.trials),
    withInterval(result.goalsPerChance),
    perChance(result.shotsPerChance.mean),
    perChance(result.turnoversPerChance.mean),
    firstShotCell(result),
  ]);
  return formatTable(
    [
      { title: 'against', align: 'left', flexible: true },
      { title: 'trials', align: 'right' },
      { title: 'goals a chance', align: 'right' },
      { title: 'shots', align: 'right' },
      { title: 'lost', align: 'right' },
      { title: '1st shot, s', align: 'right' },
    ],
    whole === undefined ? rows : [...rows, wholeRow(whole)],
  );
}

function wholeRow(whole: OpponentWhole): readonly string[] {
  return [
    `${whole.name} as a whole`,
    '',
    withInterval(whole.goalsPerChance),
    perChance(whole.shotsPerChance),
    perChance(whole.turnoversPerChance),
    '',
  ];
}

function wholeSentence(whole: OpponentWhole | undefined): string {
  if (whole === undefined) return '';
  return (
    `${whole.name} as a whole: each scheme as often as its weight says (the percent behind its name), ` +
    `played with ${whole.discipline}.`
  );
}

function firstShotCell({ firstShot }: SchemeReport): string {
  return firstShot === null ? 'none' : `${tenth(firstShot.median)} (${tenth(firstShot.q1)}-${tenth(firstShot.q3)})`;
}

function summarySentence(report: PlayReport, names: ReportNames): string {
  const sorted = [...report.results].sort((a, b) => b.goalsPerChance.mean - a.goalsPerChance.mean);
  const best = sorted[0];
  const worst = sorted.at(-1);
  if (best === undefined || worst === undefined || best === worst) return '';
  const gap = isClearlyApart(best.goalsPerChance, worst.goalsPerChance)
    ? 'a gap that is more than luck'
    : 'but that gap may be luck: more --trials would tell';
  return (
    `${names.play} does best against ${schemeName(best.scheme, names)} (${perChance(best.goalsPerChance.mean)}) and worst against ` +
    `${schemeName(worst.scheme, names)} (${perChance(worst.goalsPerChance.mean)}), ${gap}.`
  );
}

function lossTable(report: PlayReport, names: ReportNames): string {
  if (report.results.length === 0) return '';
  const rows = report.results.map((result) => [
    schemeName(result.scheme, names),
    commonLosses(result),
    tenth(result.back.mean),
    percent(result.back.fastBreak),
  ]);
  return formatTable(
    [
      { title: 'against', align: 'left', flexible: true },
      { title: 'how the ball is lost', align: 'left', flexible: true },
      { title: 'back', align: 'right' },
      { title: 'fast break', align: 'right' },
    ],
    rows,
  );
}

function commonLosses({ turnovers }: SchemeReport): string {
  const kinds = (Object.entries(turnovers) as [TurnoverKind, number][])
    .filter(([, share]) => share >= 0.005)
    .sort(([a, x], [b, y]) => y - x || a.localeCompare(b, 'en'))
    .slice(0, 3)
    .map(([kind, share]) => `${turnoverNames[kind]} ${percent(share)}`);
  return kinds.length === 0 ? 'hardly ever' : kinds.join(', ');
}

function lossSentence(report: PlayReport, names: ReportNames): string {
  const risky = [...report.results].sort((a, b) => b.back.fastBreak - a.back.fastBreak)[0];
  if (risky === undefined) return '';
  const { mean, fastBreak } = risky.back;
  if (fastBreak < 0.005) return 'When the ball is lost, hardly anybody gets a fast break out of it.';
  const most = report.results.length > 1 ? ' is the likeliest to run' : ' runs';
  return (
    `When the ball is lost, ${schemeName(risky.scheme, names)}${most} a fast break the other way (${percent(fastBreak)} of ` +
    `losses, with ${tenth(mean)} of your men between the ball and midfield).`
  );
}

function paragraph(content: string): string {
  return wrapParagraph(content, tableWidth);
}
