import { type ReactNode, type RefObject, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import {
  awaitsResult,
  type KeptGame,
  type MeasuredCalls,
  offsideWords,
  type Situation,
  warningBetween,
} from '../../teach/index.ts';
import { useIsNarrow } from '../play/use-is-narrow.ts';
import { warnBench } from './alerts.ts';
import styles from './bench.module.css';
import { CallPanel, callNote, staleWords } from './call-panel.tsx';
import { ChanceList } from './chance-list.tsx';
import { ClockBar } from './clock-bar.tsx';
import { EvenPad } from './even-pad.tsx';
import { FlagPad } from './flag-pad.tsx';
import { ResultPad } from './result-pad.tsx';
import { SchemeBar } from './scheme-bar.tsx';
import { StateCard } from './state-card.tsx';
import { TapBar } from './tap-bar.tsx';
import { UnitLine } from './unit-line.tsx';
import { type GameNow, useCallNow, useCalls, useGame } from './use-game.ts';
import { useMenOut } from './use-men-out.ts';
import { useWakeLock } from './use-wake-lock.ts';
import { useWrittenChances } from './use-written-chances.ts';

/** The whole bench while a game is on: the clock, who is short and for how long, what to do and to call, and how it ended. */
export function GameBoard({
  playbook,
  kept,
  measured,
}: {
  readonly playbook: Playbook;
  readonly kept: KeptGame;
  readonly measured: MeasuredCalls | undefined;
}): ReactNode {
  const now = useGame(playbook, kept.game);
  const calls = useCalls(playbook, kept.game.settings.sides);
  const { belief, advice } = useCallNow(playbook, now, calls, measured);
  const { learnt } = kept.game.settings;
  const out = useMenOut(now.state);
  // It holds every play against what it was when it was tried: not anew with each second that runs.
  const stale = useMemo(() => staleWords({ playbook, measured, calls, out }), [playbook, measured, calls, out]);
  const note = callNote({ advice, learnt, calls, stale });
  const noRoom = useWrittenChances(kept, now.state, now.code);
  const said = useWarnings(now);
  useWakeLock(true);
  const { state, situation } = now;
  const board = useInSight(situation.kind);
  const isCalled = state.open?.side === 'us';
  const isOpen = state.open !== null || awaitsResult(state);
  const hasLook = state.awaitsLook;
  return (
    <div ref={board} className={styles.board} data-situation={situation.kind}>
      <p role="alert" className="spoken">
        {said}
      </p>
      {noRoom !== '' && <p className={styles.fault}>{noRoom}</p>}
      <div className={styles.left}>
        <ClockBar now={now} />
        <StateCard now={now} />
        {isCalled && (
          <CallPanel
            playbook={playbook}
            now={now}
            advice={advice}
            belief={belief}
            brief={situation.kind === 'flagDown'}
          />
        )}
        {isCalled && situation.kind === 'manUp' && <UnitLine playbook={playbook} now={now} advice={advice} />}
        {situation.kind === 'manUp' && <Notes offside={offsideWords(now.code, state.box)} call={note} />}
      </div>
      <div className={styles.right}>
        {situation.kind === 'manUp' && (isCalled || hasLook) && (
          <SchemeBar
            playbook={playbook}
            now={now}
            belief={belief}
            signs={situation.strength.defenders === 5 ? measured?.ticks : undefined}
          />
        )}
        {situation.kind === 'flagDown' && <FlagPad now={now} playbook={playbook} />}
        {(isOpen || hasLook) && <ResultPad playbook={playbook} now={now} />}
        {!isOpen && !hasLook && situation.kind !== 'flagDown' && <EvenPad now={now} playbook={playbook} />}
        <TapBar now={now} playbook={playbook} />
        <ChanceList playbook={playbook} now={now} />
      </div>
    </div>
  );
}

/** What is good to know while nobody is in a hurry. */
function Notes({
  offside,
  call,
}: {
  readonly offside: { readonly words: string; readonly confirm: boolean };
  readonly call: string;
}): ReactNode {
  return (
    <div className={styles.notes}>
      <p>{call}</p>
      <p>
        {offside.words}
        {offside.confirm ? ' Confirm in your rulebook.' : ''}
      </p>
    </div>
  );
}

/** On a small screen each new situation begins at its upper edge and is seen whole: the places of the workbench are a swipe away, the clock is not. */
function useInSight(kind: Situation['kind']): RefObject<HTMLDivElement | null> {
  const board = useRef<HTMLDivElement>(null);
  const shown = useRef<Situation['kind']>(undefined);
  const isNarrow = useIsNarrow();
  useLayoutEffect(() => {
    if (!isNarrow || shown.current === kind) return;
    shown.current = kind;
    board.current?.scrollIntoView({ block: 'start', behavior: 'instant' });
  }, [isNarrow, kind]);
  return board;
}

/** Warns at ten and at five seconds and when the man is out, by ear and hand, and gives the words for who listens. */
function useWarnings({ nextBack, situation, state }: GameNow): string {
  const before = useRef(nextBack);
  const kind = useRef(situation.kind);
  const [said, setSaid] = useState('');
  useEffect(() => {
    const warning = warningBetween(before.current, nextBack);
    before.current = nextBack;
    const whose = state.manUp === 'us' ? 'their' : 'our';
    if (warning !== null) {
      warnBench(warning);
      setSaid(`${warning} seconds until ${whose} man is back.`);
    }
  }, [nextBack, state.manUp]);
  useEffect(() => {
    if (kind.current === situation.kind) return;
    kind.current = situation.kind;
    setSaid(situation.kind === 'arriving' ? `${situation.forUs ? 'Their' : 'Our'} man is on.` : '');
  }, [situation]);
  return said;
}
