import { type ReactNode, useId } from 'react';
import { bestThere, betterRead, type GradeThere, type Play, type Read, type ReadGrade } from '../../engine/index.ts';
import type { Playbook, PlayEntry } from '../../playbook/index.ts';
import { actionWords, gradeWords } from '../../render/index.ts';
import table from '../look/table.module.css';
import panel from '../opponents/panel.module.css';
import { differenceText, goalsText, signOf, sureness } from '../schemes/goal-words.ts';
import { type BarScale, IntervalBar } from '../schemes/interval-bar.tsx';
import styles from './grades-panel.module.css';
import { MendRead } from './mend-read.tsx';
import type { FoundReads } from './reads-state.ts';

export interface GradeOfReadProps {
  readonly found: FoundReads;
  /** The play as it is kept now, what it stands on, and its reads as the engine knows them. */
  readonly entry: PlayEntry;
  readonly standing: Playbook;
  readonly taught: Play['reads'];
  /** What was found is for another question. */
  readonly isOld: boolean;
  readonly grade: ReadGrade;
  /** One for all reads, so that they can be compared. */
  readonly scale: BarScale;
}

/** One taught read: how often its cue comes, what it earns there, and the better one with the way into the play, or out of it. */
export function GradeOfRead({ found, entry, standing, taught, isOld, grade, scale }: GradeOfReadProps): ReactNode {
  const { study, play } = found;
  const title = useId();
  const words = gradeWords(play, study.carrier, grade, study.at, goalsText);
  const better = surelyBetter(found, grade);
  const costs = signOf(grade.there?.earns) === 'down';
  return (
    <li className={styles.grade} aria-labelledby={title}>
      <h3 id={title}>{words.read}</h3>
      <p>{words.comes}</p>
      <p className={styles.verdict}>{words.verdict}</p>
      {grade.there !== null && (
        <Ways title={title} there={grade.there} best={bestOf(found, grade, grade.there)} scale={scale} />
      )}
      <p>Over all his possessions: {differenceText(grade.gain)} goals a chance against leaving all to the play.</p>
      {words.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      {better === null && <p className={panel.quiet}>No other read was found that is surely better.</p>}
      {(better !== null || costs) && !isOld && (
        <MendRead {...{ entry, standing, taught, better, costs }} read={play.reads[grade.read]!} />
      )}
    </li>
  );
}

function surelyBetter({ study, play }: FoundReads, grade: ReadGrade): Read | null {
  return signOf(grade.better?.gain) === 'up' ? betterRead(play, study.carrier, grade, study.at) : null;
}

/** What is best for a cue: to leave it to the play, the read itself, or something else by its name. */
type BestForCue = { readonly kind: 'play' | 'read' } | { readonly kind: 'other'; readonly name: string };

function bestOf({ study, play }: FoundReads, grade: ReadGrade, { short }: GradeThere): BestForCue {
  const best = bestThere(play, study.carrier, grade, study.at);
  if (best === null) return { kind: 'play' };
  const isItself = short.low === 0 && short.high === 0;
  return isItself ? { kind: 'read' } : { kind: 'other', name: `best for this cue: ${actionWords(best)}` };
}

/** Where the read comes: what the play makes, what the read makes, and what the best does. */
function Ways({
  title,
  there,
  best,
  scale,
}: {
  readonly title: string;
  readonly there: GradeThere;
  readonly best: BestForCue;
  readonly scale: BarScale;
}): ReactNode {
  const rows = [
    {
      name: best.kind === 'play' ? 'the play, left alone: the best for this cue' : 'the play, left alone',
      goals: there.goOn,
    },
    { name: best.kind === 'read' ? 'this read, the best for its cue' : 'this read', goals: there.goals },
    ...(best.kind === 'other' ? [{ name: best.name, goals: there.best }] : []),
  ];
  return (
    <table className={`${table.table} ${table.whole}`} aria-labelledby={title}>
      <thead>
        <tr>
          <th scope="col">When it comes</th>
          <th scope="col">Goals from there</th>
          <th scope="col" className={table.bar}>
            <span className="spoken">The interval on one scale</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, goals }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>
              <strong>{goalsText(goals.mean)}</strong> ({sureness(goals)})
            </td>
            <td className={table.bar}>
              <IntervalBar goals={goals} scale={scale} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
