import { type ReactNode, useMemo, useState } from 'react';
import { type Opponent, type Playbook, type PlayEntry, schemeName } from '../../playbook/index.ts';
import { breakWords, concedesWords } from '../../render/index.ts';
import {
  dayWords,
  type ManDownQuestion,
  manDownAnswers,
  manDownContent,
  printedManDown,
  type SchemeConcedes,
} from '../../teach/index.ts';
import { usualSeed } from '../answers/ask.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import table from '../look/table.module.css';
import panel from '../opponents/panel.module.css';
import { SearchLine } from '../reads/search-line.tsx';
import { goalsText, sureness } from '../schemes/goal-words.ts';
import { IntervalBar } from '../schemes/interval-bar.tsx';
import { FileTools } from '../teach/file-tools.tsx';
import { PageView } from '../teach/page-view.tsx';
import styles from './find-out.module.css';
import { askingWords, useAsking } from './use-asking.ts';

export interface ManDownPanelProps {
  readonly playbook: Playbook;
  /** The play whose set they stand in. */
  readonly play: PlayEntry;
  readonly opponent: Opponent;
  readonly schemes: readonly string[];
}

/** Which scheme of ours concedes least to their man-up, where it breaks, and the sheet of duties to pin up. */
export function ManDownPanel({ playbook, play, opponent, schemes }: ManDownPanelProps): ReactNode {
  const [runs, setRuns] = useState<ManDownQuestion['runs']>('set');
  const question: ManDownQuestion = {
    ...{ play: play.id, runs, schemes, side: 'right', level: null, penalty: null, seed: usualSeed },
  };
  const text = JSON.stringify([question, play, playbook.team.level, playbook.schemes ?? []]);
  const { state, find, stop } = useAsking(text, (pool, options) => manDownAnswers(pool, playbook, question, options));
  return (
    <section className={panel.panel} aria-label="Our own man-down">
      <h3 className={panel.title}>Our own man-down against them</h3>
      <p className={panel.quiet}>
        When we are short: which scheme concedes least to the set above, by men of the level, and where each breaks.
      </p>
      <div className={styles.choices}>
        <PickList
          label="They"
          value={runs}
          options={[
            { value: 'set', text: 'send the ball round and take what opens' },
            { value: 'play', text: `run something like ${play.name}` },
          ]}
          onChange={(value) => setRuns(value === 'play' ? 'play' : 'set')}
        />
        {state.kind === 'asking' ? (
          <Button onClick={stop}>Stop</Button>
        ) : (
          <Button onClick={find}>Try our schemes</Button>
        )}
      </div>
      <SearchLine
        label="How far the trials of our schemes are"
        progress={state.kind === 'asking' ? state : undefined}
        said={askingWords(state, text, 'Each scheme is played against them.')}
      />
      {state.kind === 'found' && state.text === text && (
        <Answers playbook={playbook} question={question} answers={state.found} opponent={opponent} />
      )}
    </section>
  );
}

function Answers({
  playbook,
  question,
  answers,
  opponent,
}: {
  readonly playbook: Playbook;
  readonly question: ManDownQuestion;
  readonly answers: readonly SchemeConcedes[];
  readonly opponent: Opponent;
}): ReactNode {
  const [scheme, setScheme] = useState(answers[0]?.scheme);
  const named = answers.map((answer) => ({ ...answer, scheme: schemeName(playbook, answer.scheme) }));
  // The question is made anew at each drawing; the answers stand for it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: as above
  const printed = useMemo(
    () =>
      printedManDown(
        manDownContent(playbook, question, answers, {
          opponent: opponent.name,
          paper: 'letter',
          date: dayWords(new Date()),
          ...(scheme !== undefined && { scheme }),
        }),
      ),
    [playbook, answers, opponent.name, scheme],
  );
  return (
    <>
      <p>{concedesWords(named)}</p>
      <div className={styles.scroll}>
        <table className={table.table}>
          <thead>
            <tr>
              <th scope="col">Our scheme</th>
              <th scope="col" colSpan={2}>
                Concedes, goals a man-up
              </th>
              <th scope="col" className={table.bar}>
                <span className="spoken">The interval on one scale</span>
              </th>
              <th scope="col">Where it breaks first</th>
            </tr>
          </thead>
          <tbody>
            {named.map(({ scheme: name, goals, breaks: [first] }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td>{goalsText(goals.mean)}</td>
                <td>({sureness(goals)})</td>
                <td className={table.bar}>
                  <IntervalBar goals={goals} />
                </td>
                <td>{first === undefined ? 'hardly a shot' : breakWords(first)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div className={styles.choices}>
        <PickList
          label="Sheet of"
          value={scheme ?? ''}
          options={answers.map(({ scheme: id }) => ({ value: id, text: schemeName(playbook, id) }))}
          onChange={setScheme}
        />
        <FileTools pages={printed} about={`man-down ${opponent.name}`} />
      </div>
      <PageView pages={printed.pages} />
    </>
  );
}
