import type { ReactNode } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import {
  type BenchSettings,
  type Call,
  isSameCall,
  type MeasuredCalls,
  outdatedCalls,
  schemesToTry,
  usualCallTrials,
  usualShorter,
} from '../../teach/index.ts';
import { usualSeed } from '../answers/ask.ts';
import { Button } from '../controls/button.tsx';
import { SearchLine } from '../reads/search-line.tsx';
import { type SearchKind, useSearch } from '../reads/use-search.ts';
import styles from './bench.module.css';
import { useBench } from './bench-store.ts';
import { type AskedCalls, type CallNews, measureGameCalls } from './measure-game-calls.ts';
import { useCalls } from './use-game.ts';

const kind: SearchKind<AskedCalls, CallNews> = { run: measureGameCalls, change: useBench.getState().change };

const nobody: readonly number[] = [];

/** Finds what each call makes while there is time: on the bench nothing is simulated. */
export function MeasurePanel({
  playbook,
  opponent,
  sides,
  out = nobody,
}: {
  readonly playbook: Playbook;
  readonly opponent: string | undefined;
  readonly sides: BenchSettings['sides'];
  /** Numbers of ours who are out of the game. */
  readonly out?: readonly number[];
}): ReactNode {
  const { calls: known, search } = useBench();
  const calls = useCalls(playbook, sides);
  const { find, stop } = useSearch(kind, JSON.stringify([opponent, sides, out]));
  const isOfGame = known !== undefined && known.opponent === (opponent ?? null);
  const open = isOfGame ? outdatedCalls(playbook, known, calls) : calls;
  const isFinding = search.kind === 'finding';
  const begin = (): void =>
    find({
      playbook,
      asked: {
        calls,
        schemes: schemesToTry(playbook, opponent),
        trials: usualCallTrials,
        seed: usualSeed,
        out,
        shorter: usualShorter,
        ...(opponent !== undefined && { opponent }),
      },
    });
  return (
    <section className={styles.measure} aria-label="What the calls make">
      <h3>What the calls make</h3>
      <p>
        {isFinding && open.length === 0
          ? 'The calls are known; what can be seen of their scheme is being looked at.'
          : triedWords(isOfGame ? known : undefined, calls, open)}
      </p>
      <div className={styles.measureLine}>
        {isFinding ? (
          <Button className={styles.wide ?? ''} onClick={stop}>
            Stop
          </Button>
        ) : (
          <Button className={styles.wide ?? ''} disabled={calls.length === 0} onClick={begin}>
            {open.length === 0 ? 'Try them again' : 'Try the calls'}
          </Button>
        )}
        <SearchLine
          label="How far the calls are"
          progress={isFinding ? search : undefined}
          said={
            search.kind === 'failed'
              ? `It could not be found: ${search.reason}`
              : search.kind === 'stopped'
                ? 'Stopped. What was found stays.'
                : ''
          }
        />
      </div>
    </section>
  );
}

/** What is known of the calls: all, some, or of what they were before something changed. */
function triedWords(known: MeasuredCalls | undefined, calls: readonly Call[], open: readonly Call[]): string {
  if (calls.length === 0) return 'The playbook has no play that can be called yet.';
  if (open.length === 0) return `All ${calls.length} calls were tried against them, with ${timesTried(known)} s to go.`;
  const fresh = open.filter((call) => !(known?.calls ?? []).some((one) => isSameCall(one, call))).length;
  const old = open.length - fresh;
  const stale = `${old} of ${calls.length} calls were tried before something changed that they depend on (the play, the team, the rules, or what is known of the opponent): their worth is that of then.`;
  const otherwise = fresh === calls.length ? 'the calls come in the playbook’s order' : 'they are left out';
  const missing = `${fresh} of ${calls.length} calls were not tried against them. On the bench nothing is simulated: try them now, or ${otherwise}.`;
  return [old > 0 ? stale : '', fresh > 0 ? missing : ''].filter((part) => part !== '').join(' ');
}

/** "60, 30 and 10": with how much of the penalty left the calls were tried. */
function timesTried(known: MeasuredCalls | undefined): string {
  const times = [known?.penalty ?? 0, ...(known?.calls.at(-1)?.shorter ?? []).map(({ left }) => left)];
  return times.length === 1 ? String(times[0]) : `${times.slice(0, -1).join(', ')} and ${times.at(-1)}`;
}
