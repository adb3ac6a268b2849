import { type ReactNode, useState } from 'react';
import { limits, type Playbook, type QuizEntry, removeQuiz, schemeName } from '../../../playbook/index.ts';
import { loadResult, mostMissedWords, type Standing, whoKnows } from '../../../teach/index.ts';
import { Button } from '../../controls/button.tsx';
import { PickList } from '../../controls/pick-list.tsx';
import { TextField } from '../../controls/text-field.tsx';
import table from '../../look/table.module.css';
import panel from '../../opponents/panel.module.css';
import { useDesk } from '../../shell/desk.tsx';
import styles from './quiz.module.css';
import { useQuiz } from './quiz-state.ts';

/** What came back: codes and files are loaded here, and it shows who knows what. */
export function QuizResults({ playbook, play }: { readonly playbook: Playbook; readonly play: string }): ReactNode {
  const { shown, change } = useQuiz();
  const kept = (playbook.quizzes ?? []).filter((quiz) => quiz.play === play);
  const quiz = kept.find(({ id }) => id === shown) ?? kept.at(-1);
  return (
    <section className={panel.panel} aria-labelledby="quiz-results">
      <h2 className={panel.title} id="quiz-results">
        What came back
      </h2>
      <LoadResults />
      {kept.length > 1 && (
        <PickList
          label="Quiz"
          value={quiz?.id ?? ''}
          options={kept.map(({ id, name }) => ({ value: id, text: `${name} (${id.toUpperCase()})` }))}
          onChange={(id) => change({ shown: id })}
        />
      )}
      {quiz === undefined ? (
        <p className={panel.quiet}>
          No quiz of this play has gone out yet. Saving its page keeps it here, so that its codes can be read.
        </p>
      ) : (
        <Knowledge playbook={playbook} quiz={quiz} />
      )}
    </section>
  );
}

function LoadResults(): ReactNode {
  const { store } = useDesk();
  const { said, change } = useQuiz();
  const [typed, setTyped] = useState('');
  const [problem, setProblem] = useState<string>();
  const load = (text: string): boolean => {
    const loaded = loadResult(store.playbook, text);
    if (loaded.kind === 'wrong') {
      setProblem(loaded.reason);
      change({ said: '' });
      return false;
    }
    store.edit('loading a result of the quiz', () => loaded.playbook);
    setProblem(undefined);
    const { number, round } = loaded.result;
    change({ shown: loaded.quiz.id, said: [`Number ${number}, round ${round}, is kept.`, ...loaded.also].join(' ') });
    return true;
  };
  return (
    <>
      <form
        className={styles.load}
        onSubmit={(event) => {
          event.preventDefault();
          if (load(typed)) setTyped('');
        }}
      >
        <TextField
          label="Code that a player sent"
          value={typed}
          spellCheck={false}
          autoCapitalize="characters"
          maxLength={60}
          onText={setTyped}
          {...(problem !== undefined && { problem })}
        />
        <Button type="submit" tone="main">
          Load it
        </Button>
        <label className={styles.file}>
          <span>or a file</span>
          <input
            type="file"
            accept=".json,application/json"
            onChange={(event) => {
              const { target } = event;
              const file = target.files?.[0];
              if (file === undefined) return;
              void readSmall(file).then((text) => {
                load(text);
                target.value = '';
              });
            }}
          />
        </label>
      </form>
      <p role="status" className={panel.quiet}>
        {said}
      </p>
    </>
  );
}

/** The text of a file; nothing of one that is larger than any playbook. */
async function readSmall(file: File): Promise<string> {
  return file.size > limits.bytes ? '{' : await file.text();
}

const standings: Readonly<Record<Standing, { readonly sign: string; readonly words: string }>> = {
  known: { sign: 'yes', words: 'right at once' },
  found: { sign: 'later', words: 'right when it came back' },
  missed: { sign: 'no', words: 'missed' },
  notAsked: { sign: '', words: 'not asked' },
};

function Knowledge({ playbook, quiz }: { readonly playbook: Playbook; readonly quiz: QuizEntry }): ReactNode {
  const { store } = useDesk();
  const change = useQuiz((state) => state.change);
  const knowledge = whoKnows(quiz);
  const most = mostMissedWords(knowledge, (id) => schemeName(playbook, id));
  return (
    <>
      {knowledge.men.length === 0 ? (
        <p className={panel.quiet}>Quiz {quiz.id.toUpperCase()} is out, and nothing has come back of it yet.</p>
      ) : (
        <>
          {most !== undefined && <p>{most}</p>}
          <div className={styles.wide}>
            <table className={table.table}>
              <caption className="spoken">Who knows which read, by each man’s last round</caption>
              <thead>
                <tr>
                  <th scope="col">Read</th>
                  <th scope="col">At once</th>
                  {knowledge.men.map(({ number, rounds }) => (
                    <th key={number} scope="col">
                      #{number}
                      {rounds > 1 && <span className={table.mark}> {rounds} rounds</span>}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {knowledge.questions.map(({ carrier, scheme, right, asked, first }, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a question is known by its number
                  <tr key={at}>
                    <th scope="row">
                      {at + 1}. {carrier} against {schemeName(playbook, scheme)}: {right}
                    </th>
                    <td>{asked === 0 ? '' : `${first} of ${asked}`}</td>
                    {knowledge.men.map(({ number, standing_byQuestion }) => {
                      const { sign, words } = standings[standing_byQuestion[at]!];
                      return (
                        <td key={number} title={words}>
                          {sign}
                        </td>
                      );
                    })}
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
          <p className={panel.quiet}>
            yes: right at once. later: right when it came back. no: missed. By each man’s last round; a few answers of
            one man say where to look, and no more.
          </p>
        </>
      )}
      <div className={panel.tools}>
        <Button
          tone="risky"
          onClick={() => {
            const edit = removeQuiz(store.playbook, quiz.id);
            if (edit.kind === 'refused') return change({ said: edit.reason });
            store.edit('removing a quiz', () => edit.playbook);
            change({ said: 'Removed, with what came back of it; Undo brings both back.' });
          }}
        >
          Remove this quiz
        </Button>
      </div>
    </>
  );
}
