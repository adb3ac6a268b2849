import { type Playbook, withoutNames } from '../../../playbook/index.ts';
import { type QuizWishes, usualFoes } from '../../../teach/index.ts';
import { manDownSchemeIds } from '../../../worker/index.ts';
import { usualSeed } from '../../answers/ask.ts';
import { sharesOf } from '../../opponents/shares.ts';
import type { QuizAgainst } from './quiz-state.ts';

/** What the coach chose of a quiz. */
export interface QuizChoices {
  readonly play: string;
  readonly side: 'left' | 'right';
  readonly spot: string | undefined;
  readonly against: QuizAgainst;
  readonly questions: number;
  readonly seconds: number | undefined;
}

/** The schemes of a choice that there are, and whose they are; all of a unit that is one man down where what was chosen is gone. `onPlay` are those that are run on Play. */
export function quizFoes(
  playbook: Playbook,
  against: QuizAgainst,
  onPlay: readonly string[],
): Pick<QuizWishes, 'schemes' | 'opponent'> {
  const opponent =
    against.kind === 'opponent' ? playbook.opponents?.find(({ id }) => id === against.opponent) : undefined;
  if (opponent !== undefined) {
    const met = sharesOf(opponent.schemes ?? {}).filter(({ share }) => share > 0);
    return { schemes: met.map(({ scheme }) => scheme), opponent: opponent.id };
  }
  if (against.kind === 'onPlay' && onPlay.length > 0) return { schemes: onPlay };
  if (against.kind === 'scheme' && manDownSchemeIds(playbook).includes(against.scheme))
    return { schemes: [against.scheme] };
  return { schemes: usualFoes(playbook) };
}

/** What the threads are asked for these choices. */
export function quizWishes(
  playbook: Playbook,
  { against, spot, seconds, ...choices }: QuizChoices,
  onPlay: readonly string[],
): QuizWishes {
  return {
    ...choices,
    ...quizFoes(playbook, against, onPlay),
    ...(spot !== undefined && { spot }),
    ...(seconds !== undefined && { seconds }),
    penalty: null,
    level: null,
    seed: usualSeed,
  };
}

/** All that a quiz depends on, as text: names of men, notes and other plays change none. */
export function questionText(playbook: Playbook, wishes: QuizWishes): string {
  const { team, plays, schemes, opponents, sets, settings } = withoutNames(playbook);
  const asked = plays.filter(({ id }) => id === wishes.play);
  return JSON.stringify({ wishes, team, plays: asked, schemes, opponents, sets, settings });
}
