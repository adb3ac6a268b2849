import type { ReactNode } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import {
  type Belief,
  benchUnit,
  type Call,
  type CallAdvice,
  drawCall,
  isSameCall,
  type MeasuredCalls,
  outdatedCalls,
  type WeighedCall,
} from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { goalsText, sureness } from '../schemes/goal-words.ts';
import { allowSound } from './alerts.ts';
import styles from './bench.module.css';
import { tap } from './bench-store.ts';
import { callName, type GameNow, playOfCall } from './use-game.ts';

interface CallPanelProps {
  readonly playbook: Playbook;
  readonly now: GameNow;
  readonly advice: CallAdvice;
  readonly belief: Belief;
  /** Under a flag: the call alone. */
  readonly brief: boolean;
}

/** What to call: drawn from the mix when it is asked for, so that nobody reads it before; below it what each call is worth. */
export function CallPanel({ playbook, now, advice, belief, brief }: CallPanelProps): ReactNode {
  const { game, state } = now;
  const { sides } = game.settings;
  const called = state.open?.call ?? null;
  const name = (call: Call): string => callName(playbook, call, sides);
  const make = (call: Call | undefined, drawn: boolean): void => {
    allowSound();
    if (call !== undefined) tap({ kind: 'called', ...partsOf(call), drawn, ...foreseen(advice, call, belief) });
  };
  if (advice.calls.length === 0) {
    return (
      <p className={styles.note}>
        The playbook has no play that can be called. Write one at home: the bench keeps the clocks.
      </p>
    );
  }
  return (
    <section className={styles.call} aria-label="The call">
      {called === null ? (
        <Button
          tone="main"
          className={styles.draw ?? ''}
          onClick={() => make(drawCall(advice, game.seed, state.calls), true)}
        >
          Draw the call
        </Button>
      ) : (
        <p className={styles.called} role="status">
          <span className={styles.calledWord}>Call</span> <strong>{name(called)}</strong>
        </p>
      )}
      {!brief && (
        <ul className={styles.worths} data-called={called !== null} aria-label="What the calls are worth">
          {advice.calls.slice(0, 3).map((call) => (
            <li key={`${call.play} ${call.fromSide}`}>
              <button
                type="button"
                className={styles.worth}
                aria-pressed={called !== null && isSameCall(called, call)}
                onClick={() => make(call, false)}
              >
                <span className={styles.worthName}>{name(call)}</span>
                {isWeighed(call) && <Worth call={call} />}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function isWeighed(call: Call | WeighedCall): call is WeighedCall {
  return 'share' in call;
}

function Worth({ call: { goals, share } }: { readonly call: WeighedCall }): ReactNode {
  return (
    <span className={styles.worthGoals}>
      <b>{goalsText(goals.mean)}</b> <span className={styles.sure}>{sureness(goals)}</span>
      <span className="spoken"> goals a chance, in {Math.round(100 * share)} of 100 draws</span>
    </span>
  );
}

function partsOf({ play, fromSide }: Call): Pick<Call, 'play' | 'fromSide'> {
  return { play, fromSide };
}

/** What the simulation gave the call against what was believed, to hold it against what came of it. */
function foreseen(advice: CallAdvice, call: Call, belief: Belief) {
  const weighed = advice.kind === 'measured' ? advice.calls.find((one) => isSameCall(one, call)) : undefined;
  if (weighed === undefined) return { belief };
  const { mean, low, high } = weighed.goals;
  const goals = round(mean);
  return {
    belief,
    expected: { goals, low: Math.min(goals, Math.max(0, round(low))), high: Math.max(goals, round(high)) },
  };
}

function round(goals: number): number {
  return Math.round(1000 * goals) / 1000;
}

/** What a note on the calls goes by. */
interface NoteGround {
  readonly advice: CallAdvice;
  readonly learnt: number;
  readonly calls: readonly Call[];
  /** What `staleWords` says of what was tried. */
  readonly stale: string;
}

/** Where the values and the mix come from, and what they leave out. */
export function callNote({ advice, learnt, calls, stale }: NoteGround): string {
  if (advice.kind === 'inOrder')
    return 'Nothing was tried against this before the game: the calls come in turn, in the playbook’s order.';
  return sentences(
    mixWords(advice, learnt),
    stale,
    advice.untried > 0.05 ? 'Some of what they may play was not tried.' : '',
    calls.length > advice.calls.length
      ? `${calls.length - advice.calls.length} of ${calls.length} calls were not tried before the game and are left out.`
      : '',
  );
}

/** What holds of the calls no more since they were tried; empty when all does. `out`: numbers of ours who are out of the game or in the box. */
export function staleWords({
  playbook,
  measured,
  calls,
  out,
}: {
  readonly playbook: Playbook;
  readonly measured: MeasuredCalls | undefined;
  readonly calls: readonly Call[];
  readonly out: readonly number[];
}): string {
  if (measured === undefined) return '';
  const tried = calls.filter((call) => measured.calls.some((one) => isSameCall(one, call)));
  const isOld = outdatedCalls(playbook, measured, tried).length > 0;
  const isOther = tried.some((call) => hasOtherSix(playbook, call, measured.out ?? [], out));
  return sentences(
    isOld ? 'Something changed since they were tried.' : '',
    isOther ? 'They were tried with another six: More, Try the calls.' : '',
  );
}

function sentences(...parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join(' ');
}

/** A call that comes so often is the best beyond what luck explains. Share. */
const surely = 0.95;

function mixWords({ calls, asBelieved }: Extract<CallAdvice, { kind: 'measured' }>, learnt: number): string {
  const mixed = calls.filter(({ share }) => share > 0);
  if (mixed.some(({ share }) => share >= surely)) return 'One call is the best by what is believed and was tried.';
  return `Drawn from ${mixed.length} (${learnt} learnt), each as often as it may be the best, so that it cannot be guessed: ${goalsText(asBelieved)} goals a chance.`;
}

function hasOtherSix(playbook: Playbook, call: Call, then: readonly number[], now: readonly number[]): boolean {
  if (then.join(' ') === now.join(' ') || playOfCall(playbook, call) === undefined) return false;
  return JSON.stringify(benchUnit(playbook, call, then)) !== JSON.stringify(benchUnit(playbook, call, now));
}
