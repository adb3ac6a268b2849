import { type ReactNode, useMemo, useState } from 'react';
import type { SpotId } from '../../engine/index.ts';
import { type ChanceResult, chanceResultWords, type Playbook } from '../../playbook/index.ts';
import { benchUnit, looksOfPlay, servingNumbers, type TappedLook, tappedLookWords } from '../../teach/index.ts';
import styles from './bench.module.css';
import { tap } from './bench-store.ts';
import { type GameNow, playOfCall } from './use-game.ts';

/** What happened, in the order in which it mostly does. */
const first: readonly ChanceResult[] = ['goal', 'saved', 'wide', 'turnover'];
const others: readonly ChanceResult[] = ['pipe', 'blocked', 'shotClock', 'newFlag'];

/** In a word for a button. */
const words: Readonly<Record<ChanceResult, string>> = {
  ...chanceResultWords,
  goal: 'Goal',
  saved: 'Saved',
  wide: 'Wide',
  turnover: 'Lost it',
  pipe: 'Pipe',
  blocked: 'Blocked',
  shotClock: 'Shot clock',
  newFlag: 'New flag',
};

/** On a phone the heading is not seen: what would be cheered on the wrong side says whose it is. */
const theirWords: Readonly<Partial<Record<ChanceResult, string>>> = { goal: 'They scored', turnover: 'They lost it' };

/** The first tap says what happened, the second by which look. */
export function ResultPad({ playbook, now }: { readonly playbook: Playbook; readonly now: GameNow }): ReactNode {
  const [isMore, setMore] = useState(false);
  const { state } = now;
  if (state.awaitsLook) return <LookPad playbook={playbook} now={now} />;
  const ended = state.open === null;
  const shown = isMore ? [...first, ...others] : first;
  const isTheirs = (state.open ?? state.chances.at(-1))?.side === 'them';
  const end = (result: ChanceResult): void => {
    setMore(false);
    tap({ kind: 'result', result });
  };
  return (
    <section aria-label="What happened" className={styles.results}>
      <h2 className={styles.head}>{headOf(isTheirs, ended)}</h2>
      <div className={styles.pad} data-columns="3">
        {shown.map((result) => (
          <button
            key={result}
            type="button"
            className={styles.key}
            data-tone={result === 'goal' ? 'main' : undefined}
            onClick={() => end(result)}
          >
            {isTheirs ? (theirWords[result] ?? words[result]) : words[result]}
          </button>
        ))}
        {!ended && (
          <button type="button" className={styles.key} onClick={() => tap({ kind: 'shot' })}>
            {isTheirs ? 'Shot, go on' : 'Shot, still ours'}
          </button>
        )}
        {!isMore && (
          <button type="button" className={styles.key} onClick={() => setMore(true)}>
            Other
          </button>
        )}
      </div>
    </section>
  );
}

function headOf(isTheirs: boolean, ended: boolean): string {
  if (ended) return 'It ran out. Did anything else happen?';
  return isTheirs ? 'Their man-up: what happened?' : 'What happened?';
}

/** The second tap: by which look it ended. */
function LookPad({ playbook, now }: { readonly playbook: Playbook; readonly now: GameNow }): ReactNode {
  const { state } = now;
  const chance = state.chances.at(-1);
  const call = chance?.call ?? null;
  const out = servingNumbers(state.box).join(' ');
  const looks = useMemo(() => {
    const play = call === null ? undefined : playOfCall(playbook, call);
    return play === undefined ? plainLooks : [...looksOfPlay(play), { kind: 'shot' } as const];
  }, [playbook, call]);
  const numbers = useMemo(() => {
    if (call === null || playOfCall(playbook, call) === undefined) return new Map<SpotId, number>();
    const absent = out === '' ? [] : out.split(' ').map(Number);
    return new Map(benchUnit(playbook, call, absent).map(({ spot, number }) => [spot, number]));
  }, [playbook, call, out]);
  const take = (look: TappedLook): void => {
    const scorer = numbers.get(look.to ?? look.from ?? '');
    tap({ kind: 'look', look, ...(scorer !== undefined && chance?.side === 'us' && { scorer }) });
  };
  return (
    <section aria-label="By which look" className={styles.results}>
      <h2 className={styles.asked}>
        {chance?.result === null || chance === undefined ? 'Noted.' : `${words[chance.result]}.`} By which look?
      </h2>
      <div className={styles.pad} data-columns="3">
        {looks.map((look) => (
          <button key={tappedLookWords(look)} type="button" className={styles.key} onClick={() => take(look)}>
            {tappedLookWords(look)}
          </button>
        ))}
        <button type="button" className={styles.key} onClick={() => tap({ kind: 'look', look: null })}>
          Another
        </button>
      </div>
    </section>
  );
}

const plainLooks: readonly TappedLook[] = [{ kind: 'shot' }, { kind: 'feed' }, { kind: 'skip' }];
