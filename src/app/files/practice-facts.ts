import { type Playbook, type Practice, type PracticeBlock, schemeName } from '../../playbook/index.ts';
import { practiceKindWords } from '../../render/index.ts';
import { type Facts, factsOf, line } from './difference.ts';

/** All that a practice plan says, in a coach's words. */
export function practiceFacts(practice: Practice, playbook: Playbook): Facts {
  return factsOf([
    ['Name', line(practice.name)],
    ['Day', line(practice.date)],
    ['Time', [`${practice.minutes} min, ${practice.players} players${practice.keeper === false ? ', no keeper' : ''}`]],
    ['Plays', practice.plays.map((id) => playName(playbook, id))],
    ['Blocks', practice.blocks.map((block) => blockLine(block, playbook))],
    ['Left out', practice.leftOut ?? []],
    ['Notes', line(practice.notes)],
  ]);
}

function blockLine({ kind, minutes, reps, play, scheme, spots, note }: PracticeBlock, playbook: Playbook): string {
  const parts = [
    practiceKindWords[kind],
    play && playName(playbook, play),
    spots?.join(' '),
    scheme && `against ${schemeName(playbook, scheme)}`,
    `${minutes} min`,
    reps !== undefined && `${reps} reps`,
    note,
  ];
  return parts.filter((part) => typeof part === 'string' && part !== '').join(', ');
}

function playName({ plays }: Playbook, id: string): string {
  return plays.find((play) => play.id === id)?.name ?? id;
}
