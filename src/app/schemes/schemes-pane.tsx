import { type ReactNode, useCallback, useMemo } from 'react';
import type { Trace, TraceEvent } from '../../engine/index.ts';
import {
  type FieldMarkings,
  type PaletteName,
  smallWatchOptions,
  text,
  traceEnd,
  traceNames,
  type View,
  watchField,
  watchScene,
} from '../../render/index.ts';
import type { LookAnswer, SchemeAnswer } from '../answers/answers-snapshot.ts';
import { useAnswers } from '../answers/use-answers.ts';
import { Button } from '../controls/button.tsx';
import { useScreen } from '../play/screen-state.ts';
import type { Playhead } from '../playback/playhead.ts';
import { useDesk } from '../shell/desk.tsx';
import { bestAndWorst } from './best-and-worst.ts';
import { OverallLine } from './overall-line.tsx';
import { SchemeCard } from './scheme-card.tsx';
import styles from './schemes-pane.module.css';
import { openAt } from './script-moment.ts';
import { shownShort } from './shown-words.ts';
import { shutOffWords } from './shut-off-words.ts';

/** What a small field shows: the unit, as close as it can be seen. */
const smallView: View = { left: -15.5, top: -8.5, width: 31, height: 27.8 };

export interface SchemesPaneProps {
  readonly field: FieldMarkings;
  readonly palette: PaletteName;
  /** Reading names of schemes by id. */
  readonly names: Readonly<Record<string, string>>;
  /** Opens the list from which the schemes are chosen. */
  readonly onPick: () => void;
  /** Told when a scheme is chosen to be watched on the large field. */
  readonly onWatch: () => void;
  /** The play as it stands cannot be played: what is shown is still that of the play before. */
  readonly isOld: boolean;
}

/** The play against every chosen scheme at once, in step with one playhead. */
export function SchemesPane({ field, palette, names, onPick, onWatch, isOld }: SchemesPaneProps): ReactNode {
  const { schemes, overall, failure } = useAnswers();
  const { scheme: chosen, mode, change } = useScreen();
  const ground = useMemo(() => watchField(field, { view: smallView, size: 'small' }), [field]);
  const choose = useCallback(
    (scheme: string) => {
      change({ scheme, mode: 'watch', trial: undefined });
      onWatch();
    },
    [change, onWatch],
  );
  return (
    <div className={styles.pane}>
      <h2 className="spoken">Against the schemes</h2>
      {isOld && (
        <p className={styles.old}>
          These are the answers of the play as it was before: as it stands it cannot be played. Fix it, and they follow.
        </p>
      )}
      <OverallLine overall={overall}>
        <span className={styles.pick}>
          <Button tone="plain" onClick={onPick}>
            {schemes.length} {schemes.length === 1 ? 'scheme' : 'schemes'}
          </Button>
        </span>
      </OverallLine>
      <p className={styles.sentence} data-tour="sentence">
        {bestAndWorst(schemes, names)}
      </p>
      {failure !== null && (
        <p className={styles.failure} role="alert">
          The simulation stopped: {failure}. Reload the page; nothing you wrote is lost.
        </p>
      )}
      <div className={styles.grid}>
        {schemes.map((answer) => (
          <LiveCard
            key={answer.scheme}
            answer={answer}
            name={names[answer.scheme] ?? answer.scheme}
            ground={ground}
            palette={palette}
            chosen={mode === 'watch' && answer.scheme === chosen}
            onChoose={choose}
          />
        ))}
      </div>
    </div>
  );
}

/** Why the script goes no further in this trial, as short as a stamp is wide. */
const endings: Partial<Record<TraceEvent['kind'], string>> = {
  goal: 'goal',
  save: 'saved',
  pipe: 'pipe',
  wide: 'wide',
  blocked: 'blocked',
  dropped: 'dropped',
  intercepted: 'picked off',
  deflected: 'knocked down',
  stripped: 'stripped',
  badPass: 'bad pass',
  reset: 'covered: reset',
  leave: 'left the play',
};

function endWords({ events }: Trace): string {
  const last = events.filter(({ kind }) => kind in endings).at(-1);
  return last === undefined ? 'over' : (endings[last.kind] ?? 'over');
}

// What comes open and how often, so short that it fits under a stamp; a no-break space keeps the figure whole.
function firstLookText({ kind, from, to, share }: LookAnswer): string {
  const often = `${Math.round(100 * share)}\u00a0%`;
  return kind === 'shot' ? `${from} free in ${often}` : `${kind} ${from} to ${to} open in ${often}`;
}

function LiveCard({
  answer,
  name,
  ground,
  palette,
  chosen,
  onChoose,
}: {
  readonly answer: SchemeAnswer;
  readonly name: string;
  readonly ground: ReturnType<typeof watchField>;
  readonly palette: PaletteName;
  readonly chosen: boolean;
  readonly onChoose: (scheme: string) => void;
}): ReactNode {
  const { player } = useDesk();
  const { scheme, cast, script, goals, trials, state, change, overSetAlone, looks, shown, reason } = answer;
  const moment = useMemo(() => {
    if (cast === null || script === null) return undefined;
    const names = traceNames(cast);
    const end = traceEnd(script.trace);
    const over = text('stepText', { x: 0, y: smallView.top + smallView.height - 1.6 }, endWords(script.trace));
    return (head: Playhead, pxPerYard: number) => {
      const time = Math.min(head.time, head.to) + script.began;
      const scene = watchScene(script.trace, time, names, {
        ...smallWatchOptions,
        view: smallView,
        pxPerYard,
        open: openAt(script, time),
      });
      return time < end ? scene : { ...scene, items: [...scene.items, over] };
    };
  }, [cast, script]);
  const [first] = looks;
  return (
    <SchemeCard
      name={name}
      player={player}
      ground={ground}
      moment={moment}
      palette={palette}
      goals={goals ?? undefined}
      trials={trials}
      coarse={state === 'coarse' || state === 'waiting' || answer.stale.goals}
      difference={change?.difference}
      overSetAlone={overSetAlone?.difference}
      firstLook={first === undefined ? '' : firstLookText(first)}
      shown={shown === null ? '' : shownShort(shown, first)}
      shutOff={shutOffWords(cast)}
      refused={reason ?? undefined}
      chosen={chosen}
      onChoose={useCallback(() => onChoose(scheme), [onChoose, scheme])}
    />
  );
}
