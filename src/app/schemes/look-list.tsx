import type { ReactNode } from 'react';
import { lookName, lookSentence } from '../../render/index.ts';
import type { LookAnswer, SchemeAnswer } from '../answers/answers-snapshot.ts';
import { Button } from '../controls/button.tsx';
import { useScreen } from '../play/screen-state.ts';
import { goalsText, sureness } from './goal-words.ts';
import styles from './look-list.module.css';

/** What comes open against one scheme, best first, each with one of the trials in which it did. */
export function LookList({ answer, name }: { readonly answer: SchemeAnswer; readonly name: string }): ReactNode {
  const { looks, watched } = answer;
  const change = useScreen((state) => state.change);
  return (
    <section className={styles.looks} aria-label={`What comes open against ${name}`}>
      <p className={styles.sentence}>{sentenceOf(answer, name)}</p>
      {looks.length > 0 && (
        <div className={styles.scroll}>
          <table className={styles.table}>
            <thead>
              <tr>
                <th scope="col">Look</th>
                <th scope="col">Opens in</th>
                <th scope="col">At, for</th>
                <th scope="col">Caught</th>
                <th scope="col">Worth</th>
                <th scope="col">
                  <span className="spoken">One of them</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {looks.slice(0, shownLooks).map((look) => (
                <LookRow
                  key={`${look.kind} ${look.from} ${look.to}`}
                  look={look}
                  watched={watched}
                  onShow={(trial) => change({ trial, mode: 'watch' })}
                />
              ))}
            </tbody>
          </table>
        </div>
      )}
      <p className={styles.note}>
        Opens in: share of {watched} trials of the play alone. Worth: goals from then to the chance&rsquo;s end when it
        is taken, with the interval that holds the truth 95 times in 100.
      </p>
      <Button onClick={() => change({ trial: { of: 'chance', trial: 0, from: -30 }, mode: 'watch' })}>
        Watch a whole chance
      </Button>
    </section>
  );
}

/** A coach looks at the first few; the rest hardly ever open. */
const shownLooks = 6;
/** A look is shown from a little before it opens, s. */
const before = 1.5;

function LookRow({
  look,
  watched,
  onShow,
}: {
  readonly look: LookAnswer;
  readonly watched: number;
  readonly onShow: (trial: { readonly of: 'script'; readonly trial: number; readonly from: number }) => void;
}): ReactNode {
  const [one] = look.seenIn;
  return (
    <tr>
      <th scope="row">{lookName(look)}</th>
      <td>
        {Math.round(100 * look.share)} % <span className={styles.quiet}>({Math.round(look.share * watched)})</span>
      </td>
      <td>
        {look.opens.toFixed(1)} s, {Math.max(0, look.closes - look.opens).toFixed(1)} s
      </td>
      <td>{look.kind === 'shot' ? '' : `${Math.round(100 * look.completion)} %`}</td>
      <td>
        {look.worth === null ? (
          <span className={styles.quiet}>being found out</span>
        ) : (
          <>
            {goalsText(look.worth.mean)} <span className={styles.quiet}>({sureness(look.worth)})</span>
          </>
        )}
      </td>
      <td>
        {one !== undefined && (
          <Button
            tone="plain"
            aria-label={`Show me one: ${lookName(look)}`}
            onClick={() => onShow({ of: 'script', trial: one.trial, from: one.opens - before })}
          >
            Show me
          </Button>
        )}
      </td>
    </tr>
  );
}

function sentenceOf({ looks, watched, report, state }: SchemeAnswer, name: string): string {
  const best = report?.looks.find((look) => isSame(look, looks[0]));
  if (best !== undefined) return lookSentence(name, best);
  if (watched === 0 || state === 'waiting') return `The play is being watched against ${name}.`;
  return `Nobody came open against ${name} in ${watched} trials of the play alone.`;
}

function isSame(one: { readonly from: string; readonly to: string }, other: LookAnswer | undefined): boolean {
  return one.from === other?.from && one.to === other.to;
}
