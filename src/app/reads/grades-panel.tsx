import type { ReactNode } from 'react';
import type { Read } from '../../engine/index.ts';
import { sameValue } from '../../playbook/index.ts';
import panel from '../opponents/panel.module.css';
import { FoldingPanel } from './folding-panel.tsx';
import { goalsScale } from './goals-scale.ts';
import { GradeOfRead, type GradeOfReadProps } from './grade-of-read.tsx';
import styles from './grades-panel.module.css';
import { gradesWords } from './reads-words.ts';

/** What each read that the play teaches the man is good for by itself, and what would be better. */
export function GradesPanel(props: Omit<GradeOfReadProps, 'grade' | 'scale'>): ReactNode {
  const { study, play } = props.found;
  const carrier = play.spots[study.carrier]!.id;
  const scale = goalsScale(
    study.grades.flatMap(({ there }) => (there === null ? [] : [there.goOn, there.goals, there.best])),
  );
  const isHis = (read: Read): boolean => read.carrier === carrier;
  const untold = play.reads.filter(isHis).length - study.grades.length;
  const isNew = (read: Read): boolean => isHis(read) && !play.reads.some((known) => sameValue(known, read));
  const news = props.taught.filter(isNew).length;
  return (
    <FoldingPanel
      label="The reads that are taught"
      title="The reads that are taught, each by itself"
      result={gradesWords(carrier, study.grades)}
    >
      {study.grades.length === 0 && untold === 0 && news === 0 && <p>The play teaches {carrier} nothing.</p>}
      {study.grades.length > 0 && (
        <>
          <p className={panel.quiet}>
            As if it were the only one. The best for a cue is what did most in the man-ups that were learnt from; here
            it is measured in others, as the rest is.
          </p>
          <ul className={styles.grades}>
            {study.grades.map((grade) => (
              <GradeOfRead key={grade.read} {...props} grade={grade} scale={scale} />
            ))}
          </ul>
        </>
      )}
      {untold > 0 && (
        <p className={panel.quiet}>
          {untold === 1 ? 'One more of his reads' : `${untold} more of his reads`} cannot be tried here by itself.
        </p>
      )}
      {news > 0 && (
        <p>
          {news === 1 ? 'A read' : `${news} reads`} came into the play after this was found. Find the reads again to
          have {news === 1 ? 'it' : 'them'} graded.
        </p>
      )}
      {play.lastTen?.reads.some(isHis) && (
        <p className={panel.quiet}>What he is taught for the last ten seconds is not looked at.</p>
      )}
    </FoldingPanel>
  );
}
