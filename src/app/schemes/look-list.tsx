import type { ReactNode } from 'react';
import type { LookReport } from '../../engine/index.ts';
import { lookName, lookSentence } from '../../render/index.ts';
import type { LookAnswer, SchemeAnswer } from '../answers/answers-snapshot.ts';
import { Button } from '../controls/button.tsx';
import { useScreen, type WatchedTrial } from '../play/screen-state.ts';
import { goalsText, sureness } from './goal-words.ts';
import styles from './look-list.module.css';

/** What comes open against one scheme, best first, each with one of the trials in which it did. */
export function LookList({ answer, name }: { readonly answer: SchemeAnswer; readonly name: string }): ReactNode {
  const { looks, watched } = answer;
  const change = useScreen((state) => state.change);
  const show = (trial: WatchedTrial): void => change({ trial, mode: 'watch' });
  return (
    <section className={styles.looks} aria-label={`What comes open against ${name}`}>
      <p>{sentenceOf(answer, name)}</p>
      {looks.length > 0 && (
        <ol className={styles.list}>
          {looks.slice(0, shownLooks).map((look) => (
            <LookRow key={`${look.kind} ${look.from} ${look.to}`} look={look} watched={watched} onShow={show} />
          ))}
        </ol>
      )}
      <p className={styles.quiet}>
        Shares are of {watched} trials of the play alone. Worth: goals from then to the chance&rsquo;s end when it is
        taken, with the interval that holds the truth 95 times in 100.
      </p>
      <Button onClick={() => show({ of: 'chance', trial: 0, from: -30 })}>Watch a whole chance</Button>
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
  readonly onShow: (trial: WatchedTrial) => void;
}): ReactNode {
  const [one] = look.seenIn;
  const caught = look.kind === 'shot' ? '' : `, ${Math.round(100 * look.completion)} % caught`;
  return (
    <li className={styles.row}>
      <span className={styles.name}>{lookName(look)}</span>
      <span className={styles.worth}>
        {look.worth === null ? (
          <span className={styles.quiet}>worth not known yet</span>
        ) : (
          <>
            {goalsText(look.worth.mean)} <span className={styles.quiet}>({sureness(look.worth)})</span>
          </>
        )}
      </span>
      <span className={styles.facts}>
        opens in {Math.round(100 * look.share)} % ({Math.round(look.share * watched)}), at {look.opens.toFixed(1)} s for{' '}
        {Math.max(0, look.closes - look.opens).toFixed(1)} s{caught}
      </span>
      {one !== undefined && (
        <Button
          tone="plain"
          aria-label={`Show me one: ${lookName(look)}`}
          onClick={() => onShow({ of: 'script', trial: one.trial, from: one.opens - before })}
        >
          Show me
        </Button>
      )}
    </li>
  );
}

function sentenceOf({ looks, watched, state }: SchemeAnswer, name: string): string {
  const [best] = looks;
  if (best !== undefined) return lookSentence(name, reported(best));
  if (watched === 0 || state === 'waiting') return `The play is being watched against ${name}.`;
  return `Nobody came open against ${name} in ${watched} trials of the play alone.`;
}

/** A look as a report has it, for its words. */
function reported({ worth, ...look }: LookAnswer): LookReport {
  return {
    ...look,
    value: worth?.mean ?? 0,
    valueLow: worth?.low ?? 0,
    valueHigh: worth?.high ?? 0,
    replays: worth?.replays ?? 0,
  };
}
