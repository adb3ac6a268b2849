import type { ReactNode } from 'react';
import type { BoxedPenalty } from '../../engine/index.ts';
import { arrivalSeconds, type Situation, versus } from '../../teach/index.ts';
import styles from './bench.module.css';
import { leftText } from './time-text.ts';
import type { GameNow } from './use-game.ts';

/** How many against how many, for how long, and what to do about it. */
export function StateCard({ now: { situation, state, advice, code } }: { readonly now: GameNow }): ReactNode {
  const { main, time, under } = wordsOf(situation);
  const isLast = (situation.kind === 'manUp' || situation.kind === 'manDown') && situation.left <= 10;
  return (
    <section className={styles.card} data-tone={toneOf(situation)} data-last={isLast} aria-label="What is so now">
      <div className={styles.strength}>
        <p className={styles.main}>{main}</p>
        {time !== undefined && (
          <p className={styles.time} role="timer" aria-live="off" aria-label="Until a man is back">
            {leftText(time)}
          </p>
        )}
      </div>
      {under !== '' && <p className={styles.under}>{under}</p>}
      <BoxLine penalties={state.box.penalties.filter(({ endedAt }) => endedAt === null)} />
      <p className={styles.what}>{advice.what}</p>
      {(advice.also.length > 0 || advice.confirm.length > 0) && (
        <details className={styles.more}>
          <summary>{advice.also[0] ?? 'The rule'}</summary>
          {advice.also.slice(1).map((line) => (
            <p key={line}>{line}</p>
          ))}
          {advice.confirm.length > 0 && (
            <p>
              Confirm in your rulebook: {advice.confirm.join('; ')}. By {code.name}.
            </p>
          )}
        </details>
      )}
    </section>
  );
}

/** Everybody in the box, where there is more than one: whose, who, how long. */
function BoxLine({ penalties }: { readonly penalties: readonly BoxedPenalty[] }): ReactNode {
  if (penalties.length < 2) return null;
  return (
    <ul className={styles.boxLine} aria-label="In the box">
      {penalties.map(({ number, side, man, left, fixedLeft, state }) => (
        <li key={number} data-side={side}>
          {side === 'us' ? 'ours' : 'theirs'}
          {man === null ? '' : ` ${man}`} <b>{leftText(left)}</b>
          {state === 'waiting' ? ' waits' : fixedLeft > 0 ? ' no goal' : ''}
        </li>
      ))}
    </ul>
  );
}

interface CardWords {
  readonly main: string;
  readonly time?: number;
  readonly under: string;
}

function wordsOf(situation: Situation): CardWords {
  const { least, most } = arrivalSeconds;
  switch (situation.kind) {
    case 'noManUp':
      return { main: '6 v 6', under: '' };
    case 'even':
      return { main: '6 v 6', under: '' };
    case 'periodOver':
      return { main: 'Time', under: carriedWords(situation) };
    case 'flagDown':
      return { main: situation.forUs ? 'FLAG on them' : 'FLAG on us', under: '' };
    case 'manUp':
    case 'manDown': {
      const { kind, strength, left, allLeft } = situation;
      const whose = kind === 'manUp' ? 'their man' : 'our man';
      const all = allLeft > left ? ` All are back in ${leftText(allLeft)}.` : '';
      return {
        main: kind === 'manUp' ? versus(strength) : `${strength.defenders} v ${strength.attackers}`,
        time: left,
        under: `until ${whose} is on, then ${least} to ${most} s until he is there.${all}`,
      };
    }
    case 'arriving':
      return { main: situation.forUs ? 'He is on' : 'We are six', time: Math.max(0, most - situation.ago), under: '' };
    case 'evenShort':
      return { main: versus(situation.strength), time: situation.left, under: 'until the next man is on.' };
    default:
      return exhaustive(situation);
  }
}

/** What goes on when the next period begins: "6 v 5 goes on: 0:40." */
function carriedWords({ carried, strength, manUp }: Extract<Situation, { kind: 'periodOver' }>): string {
  if (carried.length === 0) return '';
  const men = manUp === 'them' ? `${strength.defenders} v ${strength.attackers}` : versus(strength);
  return `${men} goes on: ${carried.map(({ left }) => leftText(left)).join(', ')} left.`;
}

function toneOf(situation: Situation): 'good' | 'bad' | 'warn' | 'plain' {
  if (situation.kind === 'flagDown' || situation.kind === 'arriving') return situation.forUs ? 'good' : 'bad';
  if (situation.kind === 'manUp') return 'good';
  if (situation.kind === 'manDown') return 'bad';
  return situation.kind === 'evenShort' ? 'warn' : 'plain';
}

function exhaustive(situation: never): never {
  throw new TypeError(`unknown situation: ${JSON.stringify(situation)}`);
}
