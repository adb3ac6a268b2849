import type { LookReport, OwnThrowReport, PlayReport, SchemeReport } from '../engine/index.ts';
import { isWorthKnown, leftByCell, lookName, lookSentence, percent, tenth, worthCell } from '../render/index.ts';
import { type ReportNames, schemeName } from './report-names.ts';
import { formatTable, type Row } from './table.ts';

/** How many looks are listed for each scheme: more than a unit can hold in mind helps nobody. */
const looksShown = 3;
/** How many of the play's own passes are listed below them. */
const ownShown = 3;

/** What comes open against each scheme, the best first, and below what became of the passes that the play itself asks for. */
export function looksTable(report: PlayReport, names: ReportNames): string {
  const rows = report.results.flatMap((result): readonly Row[] => {
    const shown = [...result.looks.slice(0, looksShown).map((look) => lookRow(look, result)), ...ownRows(result)];
    return shown.length === 0 ? [] : [{ section: `Against ${schemeName(result.scheme, names)}` }, ...shown];
  });
  if (rows.length === 0) return '';
  return formatTable(
    [
      { title: 'what comes open', align: 'left', flexible: true },
      { title: 'opens', align: 'right' },
      { title: 'when, s', align: 'right' },
      { title: 'there', align: 'right' },
      { title: 'shot', align: 'right' },
      { title: 'worth', align: 'right' },
      { title: 'left by (s late)', align: 'left', flexible: true },
    ],
    rows,
  );
}

/** What a coach should look for first, in a sentence. */
export function looksSentence(report: PlayReport, names: ReportNames): string {
  const results = report.results.filter((result) => result.looks.length > 0);
  const worth = ([look]: readonly LookReport[]): number => (look !== undefined && isWorthKnown(look) ? look.value : -1);
  const first = [...results].sort((a, b) => worth(b.looks) - worth(a.looks))[0];
  const look = first?.looks.find(isWorthKnown) ?? first?.looks[0];
  if (first === undefined || look === undefined) return 'No look came open often enough to be listed.';
  return lookSentence(schemeName(first.scheme, names), look);
}

function lookRow(look: LookReport, { own }: SchemeReport): readonly string[] {
  return [
    `${own.some((one) => isSamePass(one, look)) ? '*' : ' '} ${lookName(look)}`,
    percent(look.share),
    whenCell(look),
    percent(look.completion),
    percent(look.shotValue),
    worthCell(look),
    leftByCell(look.leftBy),
  ];
}

function whenCell({ opens, closes }: LookReport): string {
  return `${tenth(opens)}-${tenth(closes)}`;
}

function isSamePass(own: OwnThrowReport, look: LookReport): boolean {
  return own.from === look.from && own.to === look.to;
}

/** Asked for twice, as by the script and by a read, it is one pass to look for. */
function isSameThrow(one: OwnThrowReport, other: OwnThrowReport): boolean {
  return one.from === other.from && one.to === other.to && one.kind === other.kind;
}

/** The play's own passes that are not among the looks above: the point of the play first, whether or not it ever opens. */
function ownRows(result: SchemeReport): readonly Row[] {
  const above = result.looks.slice(0, looksShown);
  const hidden = result.own.filter((own) => !above.some((look) => isSamePass(own, look)));
  const pointed = hidden.filter(({ kind, asked }) => kind !== 'pass' || asked === 'read');
  return (pointed.length > 0 ? pointed : hidden.slice(-1))
    .sort((a, b) => Number(a.asked === 'read') - Number(b.asked === 'read'))
    .filter((own, at, all) => all.findIndex((one) => isSameThrow(one, own)) === at)
    .slice(0, ownShown)
    .map((own) => ownRow(own, result));
}

function ownRow(own: OwnThrowReport, { looks }: SchemeReport): readonly string[] {
  const name = `* ${own.kind} ${own.from} to ${own.to}`;
  if (own.completion === null) return [name, '-', '', '', '', '', `${placeOf(own)} never`];
  const look = own.share > 0 ? looks.find((one) => isSamePass(own, one)) : undefined;
  return [
    name,
    percent(own.share),
    look === undefined ? '' : whenCell(look),
    percent(own.completion),
    look === undefined ? '' : percent(look.shotValue),
    look === undefined ? '' : worthCell(look),
    `${placeOf(own)} ${percent(own.reached)}`,
  ];
}

/** The step that it belongs to; a read may count in every one. */
function placeOf({ asked, beat }: OwnThrowReport): string {
  if (asked === 'script') return beat ?? '';
  return beat === null ? 'read' : `read (${beat})`;
}
