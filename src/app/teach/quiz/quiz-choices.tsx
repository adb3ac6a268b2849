import { type ReactNode, useMemo } from 'react';
import { carriersOfPlay } from '../../../engine/index.ts';
import { type Playbook, type PlayEntry, toEnginePlay } from '../../../playbook/index.ts';
import { mostQuestions, secondsToAnswer } from '../../../teach/index.ts';
import { PickList } from '../../controls/pick-list.tsx';
import { useScreen } from '../../play/screen-state.ts';
import { opponentsWithMix } from '../../reads/reads-question.ts';
import type { SchemeChoice } from '../../schemes/scheme-choices.ts';
import { SideChoice } from '../clip/film-choices.tsx';
import shared from '../tools.module.css';
import { type QuizAgainst, useQuiz } from './quiz-state.ts';

export interface QuizChoicesProps {
  readonly playbook: Playbook;
  readonly play: PlayEntry;
  readonly schemes: readonly SchemeChoice[];
  /** How many schemes are run on the Play place. */
  readonly onPlay: number;
}

const numbersOfQuestions = [4, 6, 8, 10, 12, 15, mostQuestions];
const secondsOffered = [3, 4, 5, 6, 7, 8, 10, 12, 15, 20];

/** Whose reads, against what, how many and how quickly. */
export function QuizChoices({ playbook, play, schemes, onPlay }: QuizChoicesProps): ReactNode {
  const { spot, against, questions, seconds, change } = useQuiz();
  const side = useScreen((state) => state.side);
  const carriers = useMemo(() => carriersOfPlay(toEnginePlay(playbook, play.id, side)), [playbook, play.id, side]);
  const usual = secondsToAnswer[playbook.team.level];
  return (
    <div className={shared.choices}>
      <PickList
        label="Reads of"
        value={spot !== undefined && carriers.includes(spot) ? spot : ''}
        options={[{ value: '', text: 'the whole unit' }, ...carriers.map((id) => ({ value: id, text: id }))]}
        onChange={(value) => change({ spot: value === '' ? undefined : value })}
      />
      <PickList
        label="Against"
        value={listValue(against)}
        options={[
          { value: 'all', text: 'all schemes with one man down' },
          { value: 'onPlay', text: `the schemes on Play (${onPlay})` },
          ...opponentsWithMix(playbook).map(({ id, name }) => ({
            value: `opponent:${id}`,
            text: `what ${name} plays`,
          })),
          ...schemes.map(({ id, name }) => ({ value: `scheme:${id}`, text: name })),
        ]}
        onChange={(value) => change({ against: againstOf(value) })}
      />
      <SideChoice />
      <PickList
        label="Questions"
        value={String(questions)}
        options={numbersOfQuestions.map((count) => ({ value: String(count), text: String(count) }))}
        onChange={(value) => change({ questions: Number(value) })}
      />
      <PickList
        label="Time to answer"
        value={seconds === undefined ? '' : String(seconds)}
        options={[
          { value: '', text: `${usual} s, as is usual at this level` },
          ...secondsOffered.map((count) => ({ value: String(count), text: `${count} s` })),
        ]}
        onChange={(value) => change({ seconds: value === '' ? undefined : Number(value) })}
      />
    </div>
  );
}

// The values of the list: an id may be any word, so it has a mark before it.
function listValue(against: QuizAgainst): string {
  if (against.kind === 'opponent') return `opponent:${against.opponent}`;
  return against.kind === 'scheme' ? `scheme:${against.scheme}` : against.kind;
}

function againstOf(value: string): QuizAgainst {
  const [kind, ...rest] = value.split(':');
  const id = rest.join(':');
  if (kind === 'opponent') return { kind, opponent: id };
  if (kind === 'scheme') return { kind, scheme: id };
  return { kind: kind === 'onPlay' ? 'onPlay' : 'all' };
}
