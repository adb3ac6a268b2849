import type { Playbook } from '../playbook/index.ts';
import {
  brierSentence,
  firstShotText,
  type GroupNumbers,
  groupingWords,
  planBinText,
  proposeGrades,
  proposeSchemes,
  type SeasonReport,
  type SideReport,
  shareText,
  shotsText,
} from '../teach/index.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** A season as tables and sentences: ours, theirs, what the simulation said, and what may be changed for it. */
export function seasonText(playbook: Playbook, { ours, theirs, plan, planSays }: SeasonReport): string {
  const parts = [
    sideText('Ours', ours),
    ...(theirs.all.chances === 0 ? [] : [sideText('Theirs', theirs)]),
    ...looksText(ours),
    planSays,
    ...(plan === undefined ? [] : [planTable(plan), brierSentence(plan)]),
    ...proposalsText(playbook),
    `Share: as counted, with where the truth lies 95 times in 100 (Wilson). Best guess: drawn toward what is usual, more the fewer there are. ${ours.prior.source}`,
  ];
  return parts.map((part) => (part.includes('\n') ? part : wrapParagraph(part, tableWidth))).join('\n\n');
}

function sideText(whose: string, report: SideReport): string {
  const { all, groups, says, by, clears } = report;
  const rows = groups.map(({ name, numbers }) => rowOf(name, numbers));
  const table = formatTable(
    [
      { title: groupingWords[by].toLowerCase(), align: 'left', flexible: true },
      { title: 'goals', align: 'right' },
      { title: 'share', align: 'right' },
      { title: 'best guess', align: 'right' },
      { title: 'shots', align: 'right' },
      { title: 'first shot', align: 'right' },
    ],
    [...rows, rowOf('all', all)],
  );
  const cleared = clears.stops === 0 ? [] : [`After a stop we cleared ${clears.cleared} of ${clears.stops}.`];
  const sentences = [
    `${whose}: ${says}`,
    ...groups.filter(({ beside }) => beside !== undefined).map((one) => one.says),
    ...cleared,
  ];
  return `${table}\n\n${sentences.map((words) => wrapParagraph(words, tableWidth)).join('\n')}`;
}

function rowOf(name: string, numbers: GroupNumbers): readonly string[] {
  return [
    name,
    `${numbers.goals} of ${numbers.chances}`,
    shareText(numbers.raw),
    shareText(numbers.shrunk),
    shotsText(numbers),
    firstShotText(numbers),
  ];
}

/** Looks that are named; the rest were rare. */
const mostLooks = 6;

function looksText({ looks }: SideReport): readonly string[] {
  if (looks.length === 0) return [];
  const told = looks.slice(0, mostLooks).map(({ name, times, goals }) => `${name}: ${goals} of ${times}`);
  return [`Looks that were taken most, and the goals from them: ${told.join('; ')}.`];
}

function planTable({ bins }: NonNullable<SeasonReport['plan']>): string {
  return formatTable(
    [
      { title: 'expected goals', align: 'left' },
      { title: 'on average', align: 'right' },
      { title: 'goals', align: 'right' },
      { title: 'share', align: 'right' },
    ],
    bins.map((bin) => [
      planBinText(bin),
      bin.expected.toFixed(2),
      `${bin.goals} of ${bin.chances}`,
      shareText(bin.came),
    ]),
  );
}

function proposalsText(playbook: Playbook): readonly string[] {
  const made = [...proposeSchemes(playbook), ...proposeGrades(playbook)].filter(({ edit }) => edit !== undefined);
  if (made.length === 0) return [];
  const lines = made.map(({ title, changes }) => wrapParagraph(`${title}: ${changes.join('; ')}.`, tableWidth));
  return [
    `${wrapParagraph('What these man-ups suggest to change; nothing changes until you accept it in the workbench:', tableWidth)}\n${lines.join('\n')}`,
  ];
}
