import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { LookReport, OwnThrowReport, Read } from '../../engine/index.ts';
import { lookName, lookSentence } from '../../render/index.ts';
import type { LookAnswer, SchemeAnswer } from '../answers/answers-snapshot.ts';
import { Button } from '../controls/button.tsx';
import { useScreen, type WatchedTrial } from '../play/screen-state.ts';
import { clockText } from '../playback/clock-text.ts';
import { goalsText, setAloneText, sureness } from './goal-words.ts';
import styles from './look-list.module.css';
import { originSentence } from './origin-words.ts';
import { shownSentence } from './shown-words.ts';
import { isSameRead, taughtAs } from './taught-read.ts';
import { useGoalOrigins } from './use-goal-origins.ts';

export interface LookListProps {
  readonly answer: SchemeAnswer;
  readonly name: string;
  /** What the play's men have been taught to look for. */
  readonly reads: readonly Read[];
  /** What a look is as a read of the man who has the ball then. */
  readonly asRead: (look: LookAnswer) => Read;
  /** Adds the read to the play; false when that is refused. */
  readonly onTeach: (read: Read) => boolean;
  /** Told when one is to be watched on the large field. */
  readonly onWatch: () => void;
}

/** What comes open against one scheme, best first, each with one of the trials in which it did. */
export function LookList({ answer, name, reads, asRead, onTeach, onWatch }: LookListProps): ReactNode {
  const { looks, watched, goals, overSetAlone, shown: choice } = answer;
  const change = useScreen((state) => state.change);
  const hasOwnTrial = useScreen((state) => state.trial !== undefined);
  const [last, setLast] = useState<Read>();
  const teach = (read: Read): void => setLast(onTeach(read) ? read : undefined);
  const rows = looks.slice(0, shownLooks).map((look) => ({ look, read: asRead(look) }));
  const isSaidInRow = rows.some(({ read }) => isSameRead(read, last));
  const origins = useGoalOrigins(answer);
  const from = origins === undefined ? undefined : originSentence(origins, looks.length > 0);
  const show = (trial: WatchedTrial): void => {
    change({ trial, mode: 'watch' });
    onWatch();
  };
  return (
    <section className={styles.looks} aria-label={`What comes open against ${name}`}>
      <p>{sentenceOf(answer, name)}</p>
      {choice !== null && !hasOwnTrial && <p className={styles.quiet}>{shownSentence(choice)}</p>}
      {goals !== null && overSetAlone !== null && (
        <p className={styles.quiet}>
          Against {name}: {setAloneText(goals, overSetAlone.difference)}.
        </p>
      )}
      {from !== undefined && <p className={styles.quiet}>{from}</p>}
      {/* Seen only while no row says it: what is taught may come open no more. */}
      <p role="status" className={last === undefined || isSaidInRow ? 'spoken' : styles.quiet}>
        {last !== undefined && taughtWords(last, reads, true)}
      </p>
      {looks.length > 0 && (
        <ol className={styles.list}>
          {rows.map(({ look, read }) => (
            <LookRow
              key={`${look.kind} ${look.from} ${look.to}`}
              look={look}
              watched={watched}
              onShow={show}
              read={read}
              reads={reads}
              isLast={isSameRead(read, last)}
              onTeach={teach}
            />
          ))}
        </ol>
      )}
      <p className={styles.quiet}>
        Shares are of {watched} trials in which the play is run as written. Worth: goals from then to the chance&rsquo;s
        end when it is taken, with the interval that holds the truth 95 times in 100.
      </p>
      <OwnThrows answer={answer} />
      <Button
        onClick={() =>
          show({ of: 'chance', trial: 0, from: -30, until: undefined, words: 'A whole chance, from the whistle.' })
        }
      >
        Watch a whole chance
      </Button>
    </section>
  );
}

/** How far the play itself comes against the scheme: each pass that it asks for, and what becomes of it. */
function OwnThrows({ answer: { report } }: { readonly answer: SchemeAnswer }): ReactNode {
  const own = report?.own ?? [];
  if (own.length === 0) return null;
  return (
    <>
      <h3>The passes that the play asks for</h3>
      <ul className={styles.list}>
        {own.map((one) => (
          <li key={`${one.asked} ${one.beat ?? ''} ${one.from} ${one.to}`} className={styles.own}>
            <span className={styles.name}>{lookName(one)}</span>
            <span className={styles.facts}>{ownWords(one)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

function ownWords({ reached, share, completion, asked }: OwnThrowReport): string {
  const whole = (value: number): string => `${Math.round(100 * value)}\u00a0%`;
  const whose = asked === 'read' ? 'a read; ' : '';
  if (reached === 0) return `${whose}the play never comes to it`;
  const caught = completion === null ? '' : `, at its best moment caught in ${whole(completion)}`;
  // Passes that only bring the ball round are never better than going on: that they are no look is no news.
  const look = share === 0 ? '' : `, worth more than going on in ${whole(share)}`;
  return `${whose}comes to it in ${whole(reached)}${caught}${look}`;
}

/** A coach looks at the first few; the rest hardly ever open. */
const shownLooks = 6;
/** A look is shown from a little before it opens, s. */
const before = 1.5;
/** It stands still when it has been open for so long, s. */
const shown = 0.15;

function LookRow({
  look,
  watched,
  onShow,
  read,
  reads,
  isLast,
  onTeach,
}: {
  readonly look: LookAnswer;
  readonly watched: number;
  readonly onShow: (trial: WatchedTrial) => void;
  readonly read: Read;
  readonly reads: readonly Read[];
  readonly isLast: boolean;
  readonly onTeach: (read: Read) => void;
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
        opens in {Math.round(100 * look.share)} % ({Math.round(look.share * watched)}), at {clockText(look.opens)} s for{' '}
        {clockText(Math.max(0, look.closes - look.opens))} s{caught}
      </span>
      <span className={styles.does}>
        {one !== undefined && (
          <Button tone="plain" aria-label={`Show me one: ${lookName(look)}`} onClick={() => onShow(showing(look, one))}>
            Show me
          </Button>
        )}
        <TeachIt look={look} read={read} reads={reads} isLast={isLast} onTeach={onTeach} />
      </span>
    </li>
  );
}

/** Offers the look as a read while its man has not been taught it; then says which of his it is, and who just taught it how to take it back. */
function TeachIt({
  look,
  read,
  reads,
  isLast,
  onTeach,
}: {
  readonly look: LookAnswer;
  readonly read: Read;
  readonly reads: readonly Read[];
  /** It is the one that was taught last here. */
  readonly isLast: boolean;
  readonly onTeach: (read: Read) => void;
}): ReactNode {
  const said = useRef<HTMLSpanElement>(null);
  const words = taughtWords(read, reads, isLast);
  const isAwaited = words !== undefined && isLast;
  // The button that had the focus is gone, perhaps with the whole list for a moment: what is said in its place has it then.
  useEffect(() => {
    if (isAwaited && document.activeElement === document.body) said.current?.focus({ preventScroll: true });
  }, [isAwaited]);
  if (words === undefined)
    return (
      <Button tone="plain" aria-label={`Teach it as a read: ${lookName(look)}`} onClick={() => onTeach(read)}>
        Teach it
      </Button>
    );
  return (
    <span ref={said} className={styles.taught} tabIndex={-1}>
      {words}
    </span>
  );
}

/** That a read is taught, and as which of its man's; undefined when it is not. */
function taughtWords(read: Read, reads: readonly Read[], isLast: boolean): string | undefined {
  const place = taughtAs(read, reads);
  if (place === undefined) return undefined;
  return `taught: ${read.carrier}\u2019s read ${place}${isLast ? '; Undo takes it back' : ''}`;
}

function showing(look: LookAnswer, one: LookAnswer['seenIn'][number]): WatchedTrial {
  const words = `Trial ${one.trial + 1}: the ${lookName(look)} opens at ${clockText(one.opens)} s.`;
  return { of: 'script', trial: one.trial, from: one.opens - before, until: one.opens + shown, words };
}

function sentenceOf({ looks, watched, state }: SchemeAnswer, name: string): string {
  const [best] = looks;
  if (best !== undefined) return lookSentence(name, reported(best));
  if (watched === 0 || state === 'waiting') return `The play is being watched against ${name}.`;
  return `Nobody came open against ${name} in ${watched} trials in which the play is run as written.`;
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
