import { type ReactNode, useMemo } from 'react';
import { type Playbook, ruleCodeOf } from '../../../playbook/index.ts';
import {
  drawnField,
  inHundred,
  pxPerYard,
  type Quiz,
  type QuizQuestion,
  questionScene,
} from '../../../render/index.ts';
import { SceneMarks } from '../../field/scene-marks.tsx';
import { useLook } from '../../look/look.ts';
import styles from './quiz.module.css';

/** The questions of a quiz with what is right, as the coach looks them over before it goes out. */
export function QuizPreview({ playbook, quiz }: { readonly playbook: Playbook; readonly quiz: Quiz }): ReactNode {
  return (
    <ol className={styles.questions} aria-label="The questions">
      {quiz.questions.map((question, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a question is known by its number
        <li key={at} className={styles.question}>
          <Moment playbook={playbook} quiz={quiz} question={question} />
          <Answers quiz={quiz} question={question} number={at + 1} />
        </li>
      ))}
    </ol>
  );
}

interface QuestionProps {
  readonly quiz: Quiz;
  readonly question: QuizQuestion;
}

function Moment({ playbook, quiz, question }: QuestionProps & { readonly playbook: Playbook }): ReactNode {
  const palette = useLook((state) => state.shown);
  const scene = useMemo(
    () => questionScene(quiz, question, drawnField(ruleCodeOf(playbook).markings)),
    [playbook, quiz, question],
  );
  const { view, items, title } = scene;
  return (
    <svg
      className={styles.field}
      viewBox={`0 0 ${view.width * pxPerYard} ${view.height * pxPerYard}`}
      role="img"
      aria-label={title}
    >
      <SceneMarks items={items} view={view} palette={palette} />
    </svg>
  );
}

function Answers({ quiz, question, number }: QuestionProps & { readonly number: number }): ReactNode {
  const { carrier, before, choices, reason, taught } = question;
  return (
    <div className={styles.answers}>
      <h3 className={styles.asked}>
        {number}. {quiz.spots[carrier]} against {before.name}
      </h3>
      <ul className={styles.worths}>
        {choices.map(({ words, worth: [mean, low, high], right }) => (
          <li key={words} data-right={right}>
            <span>
              {right ? 'Right: ' : ''}
              {words}
            </span>
            <span className={styles.number}>
              {inHundred(mean)} ({inHundred(low)} to {inHundred(high)})
            </span>
          </li>
        ))}
      </ul>
      <p>{reason}</p>
      {taught !== '' && <p className={styles.quiet}>{taught}</p>}
    </div>
  );
}
