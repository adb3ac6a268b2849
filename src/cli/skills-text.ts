import {
  alreadyBestWords,
  bestPracticeWords,
  count,
  gainOfPractice,
  type PracticeKind,
  practiceBasisWords,
  practiceNames,
  practisingWords,
  roughRowsWords,
} from '../render/index.ts';
import type { PractisingMan, RankedWorths, SkillWorth, SkillWorths } from '../worker/index.ts';
import { type ReportNames, schemeName } from './report-names.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** Rows of one man's practice that are printed; all of them are in the JSON. */
const rowsOfMen = 12;

/** What a better skill is worth, of all six together first, then of each man. */
export function skillsText({ unit, each }: SkillWorths, men: readonly PractisingMan[], names: ReportNames): string {
  const parts = [`${names.play}: what practice is worth. ${practiceBasisWords}`, ...groupText(unit, 'unit', men)];
  const ofMen = each === null ? [] : groupText(each, 'each', men);
  const best = [unit.rows[0], each?.rows[0]].flatMap((row) => (row?.isFresh === true ? [row] : []));
  return [
    ...parts,
    ...ofMen,
    ...(best.length === 0 ? [] : [schemeTable(best, men, names)]),
    roughRowsWords,
    alreadyBestWords(men),
  ]
    .filter((part) => part !== '')
    .map((part) => (part.includes('\n') ? part : wrapParagraph(part, tableWidth)))
    .join('\n\n');
}

function groupText(
  { rows, leaders }: RankedWorths,
  kind: PracticeKind,
  men: readonly PractisingMan[],
): readonly string[] {
  const shown = rows.slice(0, rowsOfMen);
  const rest = rows.length - shown.length;
  return [
    bestPracticeWords(leaders, kind, men),
    worthTable(shown, men),
    rest > 0 ? `${count(rest)} more gained less than the rough ones here; --json has them.` : '',
  ];
}

function worthTable(rows: readonly SkillWorth[], men: readonly PractisingMan[]): string {
  return formatTable(
    [
      { title: 'one grade better in', align: 'left', flexible: true },
      { title: 'who', align: 'left' },
      { title: 'goals in 100 man-ups', align: 'right' },
      { title: 'man-ups a scheme', align: 'right' },
    ],
    rows.map(({ man, skill, gain, trials, isFresh }) => [
      practiceNames[skill],
      practisingWords(man, men),
      gainOfPractice(gain),
      `${isFresh ? '' : 'rough, '}${count(trials)}`,
    ]),
  );
}

/** Against which schemes the first rows gain. */
function schemeTable(best: readonly SkillWorth[], men: readonly PractisingMan[], names: ReportNames): string {
  return formatTable(
    [
      { title: 'against', align: 'left', flexible: true },
      ...best.map(
        ({ man, skill }) =>
          ({ title: `${practiceNames[skill]}, ${practisingWords(man, men)}`, align: 'right' }) as const,
      ),
    ],
    best[0]!.byScheme.map(({ scheme }, at) => [
      schemeName(scheme, names),
      ...best.map(({ byScheme }) => gainOfPractice(byScheme[at]!.gain)),
    ]),
  );
}
