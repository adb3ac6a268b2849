import type { Level } from '../engine/index.ts';
import { type Playbook, type Practice, schemeName, toEnginePlay } from '../playbook/index.ts';
import { practiceCautions, withInterval } from '../render/index.ts';
import { blockMeasure, blockTitle, clockWords, type MadePractice, runLines } from '../teach/index.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** A practice plan on the terminal: a row for each block with its clock, what there is to be had from each look, what is left out, and the cautions. */
export function practiceText(
  playbook: Playbook,
  { practice, findings }: MadePractice,
  { side, level }: { readonly side: 'left' | 'right'; readonly level: Level | null },
): string {
  const parts = [
    wrap(`${practice.name}. ${practice.notes ?? ''}`),
    planTable(playbook, practice, side),
    ...(practice.leftOut ?? []).map(wrap),
    worthTable(playbook, findings),
    wrap(
      'How to read this. Carries: goals a man-up when the look is taken whenever it is there, with where the truth lies 95 times in 100. Decides: what its read earns over going on with the play. *: not in the play, it opens while the play runs.',
    ),
    [
      'Cautions',
      ...practiceCautions(level ?? playbook.team.level).map(({ about, words }) => wrap(`${about}: ${words}`)),
    ].join('\n'),
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

function planTable(playbook: Playbook, practice: Omit<Practice, 'id'>, side: 'left' | 'right'): string {
  let minutes = 0;
  const rows = practice.blocks.map((block) => {
    const isKnown = playbook.plays.some(({ id }) => id === block.play);
    const play = isKnown ? toEnginePlay(playbook, block.play!, side) : undefined;
    const from = clockWords(minutes);
    minutes += block.minutes;
    const runs =
      play === undefined || block.kind === 'part' ? [] : runLines(block, play, (id) => schemeName(playbook, id));
    return [from, blockTitle(block, play, practice.plays.length > 1), blockMeasure(block), runs.join('; ')];
  });
  return formatTable(
    [
      { title: 'clock', align: 'right' },
      { title: 'block', align: 'left', flexible: true },
      { title: 'how long', align: 'left' },
      { title: 'reps of', align: 'left', flexible: true },
    ],
    rows,
  );
}

function worthTable(playbook: Playbook, findings: MadePractice['findings']): string {
  const rows = findings.flatMap(({ looks }) =>
    looks.map(({ kind, from, to, isTaught, carries, decides, against: [best] }) => [
      `${isTaught ? ' ' : '*'} ${kind} ${from === to ? `by ${from}` : `${from} to ${to}`}`,
      withInterval(carries),
      decides === null ? '' : withInterval(decides),
      best.carries === 0 ? 'hardly ever there' : schemeName(playbook, best.scheme),
    ]),
  );
  return formatTable(
    [
      { title: 'look', align: 'left' },
      { title: 'carries', align: 'right' },
      { title: 'decides', align: 'right' },
      { title: 'most against', align: 'left', flexible: true },
    ],
    rows,
  );
}

function wrap(words: string): string {
  return wrapParagraph(words, tableWidth);
}
