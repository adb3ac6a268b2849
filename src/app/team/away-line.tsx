import { type ReactNode, useMemo } from 'react';
import type { Play } from '../../engine/index.ts';
import type { Playbook, PlayEntry, Side } from '../../playbook/index.ts';
import { useSideAnswers } from '../answers/use-side-answers.ts';
import { addressOf } from '../shell/place.ts';
import { AbsenceCost } from './absence-cost.tsx';
import { awayQuestion } from './absence-questions.ts';
import styles from './away-line.module.css';
import { manText } from './line-up-words.ts';
import { missedMen } from './missed-men.ts';

export interface AwayLineProps {
  readonly playbook: Playbook;
  /** As it is kept. */
  readonly entry: PlayEntry;
  /** As it is seen from the side. */
  readonly play: Play;
  readonly side: Side;
  /** It can be simulated. */
  readonly isWhole: boolean;
}

/** Who of the best six is away today, and what that costs this play; nothing when all are here. */
export function AwayLine({ playbook, entry, play, side, isWhole }: AwayLineProps): ReactNode {
  const missed = useMemo(() => missedMen(playbook, play), [playbook, play]);
  const question = useMemo(
    () => (missed.length === 0 || !isWhole ? undefined : awayQuestion(playbook, entry, side, missed)),
    [missed, isWhole, playbook, entry, side],
  );
  const costs = useSideAnswers(useMemo(() => (question === undefined ? [] : [question]), [question]));
  if (missed.length === 0) return null;
  const names = missed.map((number) => `${number} ${manText(number, playbook.team.roster)}`).join(', ');
  return (
    <p className={styles.away}>
      Without {names}, absent today: {question !== undefined && <AbsenceCost answer={costs.get(question.id)} />}{' '}
      <a href={addressOf({ kind: 'team' })}>Who is here</a>
    </p>
  );
}
