import type { Playbook } from '../playbook/index.ts';
import {
  binMeanText,
  brierSentence,
  clearsSentence,
  comparePair,
  countingSentence,
  firstShotText,
  forecastSentence,
  type GroupNumbers,
  groupingWords,
  planBinText,
  proposeGrades,
  proposeSchemes,
  type SeasonReport,
  type SideReport,
  shareText,
  shootersId,
  shotsText,
} from '../teach/index.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** A season as tables and sentences: ours, theirs, what the simulation said, and what may be changed for it. `pair` names two groups that are held beside each other. */
export function seasonText(
  playbook: Playbook,
  { ours, theirs, plan, planSays }: SeasonReport,
  pair: readonly [string, string] | undefined,
): string {
  const parts = [
    sideText('Ours', ours, pair),
    ...(theirs.all.chances === 0 ? [] : [sideText('Theirs', theirs, pair)]),
    ...(ours.looksSay === undefined ? [] : [ours.looksSay]),
    planSays,
    ...(plan === undefined ? [] : [planTable(plan), `${forecastSentence(plan)} ${brierSentence(plan)}`]),
    ...proposalsText(playbook),
    `${countingSentence(ours.manUps)} Share: as counted, with where the truth lies 95 times in 100 (Wilson). Best guess: drawn toward what is usual, more the fewer there are. ${ours.prior.source}`,
  ];
  return parts.map((part) => (part.includes('\n') ? part : wrapParagraph(part, tableWidth))).join('\n\n');
}

function sideText(whose: string, report: SideReport, pair: readonly [string, string] | undefined): string {
  const { all, groups, says, by, clears, uneven, told } = report;
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
  const cleared = clearsSentence(clears);
  const compared = pair && comparePair(report, pair[0], pair[1]);
  const sentences = [
    `${whose}: ${says}`,
    ...(uneven === undefined ? groups.filter(({ beside }) => beside !== undefined).map((one) => one.says) : told),
    ...(compared === undefined ? [] : [`Compared: ${compared.says}`]),
    ...(cleared === undefined ? [] : [cleared]),
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

function planTable({ bins }: NonNullable<SeasonReport['plan']>): string {
  return formatTable(
    [
      { title: 'expected goals', align: 'left' },
      { title: 'on average', align: 'right' },
      { title: 'goals', align: 'right' },
      { title: 'share', align: 'right' },
    ],
    bins.map((bin) => [planBinText(bin), binMeanText(bin), `${bin.goals} of ${bin.chances}`, shareText(bin.came)]),
  );
}

function proposalsText(playbook: Playbook): readonly string[] {
  const all = [...proposeSchemes(playbook), ...proposeGrades(playbook)];
  const made = all.filter(({ edit }) => edit !== undefined);
  const lines = made.map(({ title, changes }) => wrapParagraph(`${title}: ${changes.join('; ')}.`, tableWidth));
  // Why nothing follows for any shooter is told too: else one waits for it.
  const silent = all.filter(({ id }) => id === shootersId).map(({ title, says }) => `${title}: ${says}`);
  if (made.length === 0) return silent;
  return [
    `${wrapParagraph('What these chances suggest to change; nothing changes until you accept it in the workbench:', tableWidth)}\n${lines.join('\n')}`,
    ...silent,
  ];
}
