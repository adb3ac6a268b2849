import { type Opponent, type Playbook, withoutNames } from '../../../playbook/index.ts';
import { type PracticeQuestion, usualFoes } from '../../../teach/index.ts';
import { usualSeed } from '../../answers/ask.ts';
import { readPlayOf } from '../../play/play-reading.ts';

/** What a plan is to be made of, as far as it takes simulation. */
export interface PlanChoices {
  readonly play: string;
  readonly also: string | undefined;
  readonly opponent: string | undefined;
  readonly side: 'left' | 'right';
}

/** The opponents of whom it is known what they play. */
export function knownOpponents({ opponents }: Pick<Playbook, 'opponents'>): readonly Opponent[] {
  return (opponents ?? []).filter(({ schemes }) => Object.keys(schemes ?? {}).length > 0);
}

/** The question that the threads are asked; against an opponent who is not there any more it is that against all schemes with one man down. */
export function planQuestion(playbook: Playbook, { play, also, opponent, side }: PlanChoices): PracticeQuestion {
  const foe = knownOpponents(playbook).find(({ id }) => id === opponent);
  const second = playbook.plays.some(({ id }) => id === also) && also !== play ? also : undefined;
  const plays = second === undefined ? [play] : [play, second];
  const schemes =
    foe === undefined
      ? usualFoes(playbook).map((id) => ({ id, weight: 1 }))
      : Object.entries(foe.schemes ?? {}).map(([id, weight]) => ({ id, weight }));
  return {
    plays,
    others: othersOf(playbook, plays),
    schemes,
    ...(foe !== undefined && { opponent: foe.id }),
    side,
    penalty: null,
    level: null,
    seed: usualSeed,
  };
}

/** Plays that may be named in place of those that are practised: none that is put away, or has something to fix first. */
function othersOf(playbook: Playbook, plays: readonly string[]): readonly string[] {
  return playbook.plays
    .filter(({ id, archived }) => archived !== true && !plays.includes(id))
    .filter((entry) => readPlayOf({ ...playbook, plays: [] }, entry).isWhole)
    .map(({ id }) => id);
}

/** All that the answer depends on, as text: names, notes and other plays change no trial. */
export function questionText(playbook: Playbook, { others: _, ...question }: PracticeQuestion): string {
  const { team, plays, schemes, opponents, sets, settings } = withoutNames(playbook);
  const asked = plays.filter(({ id }) => question.plays.includes(id));
  return JSON.stringify({ question, team, plays: asked, schemes, opponents, sets, settings });
}
