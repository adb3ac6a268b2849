import { type ReactNode, useCallback, useEffect, useMemo } from 'react';
import {
  type FieldMarkings,
  lookName,
  type PaletteName,
  smallWatchOptions,
  traceNames,
  type View,
  watchField,
  watchScene,
} from '../../render/index.ts';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import { useAnswers } from '../answers/use-answers.ts';
import { useScreen } from '../play/screen-state.ts';
import type { Playhead } from '../playback/playhead.ts';
import { showSpan } from '../playback/playhead.ts';
import { useDesk } from '../shell/desk.tsx';
import { bestAndWorst } from './best-and-worst.ts';
import { OverallLine } from './overall-line.tsx';
import { SchemeCard } from './scheme-card.tsx';
import styles from './schemes-pane.module.css';
import { openAt } from './script-moment.ts';

/** What a small field shows: the unit, as close as it can be seen. */
const smallView: View = { left: -14.5, top: -8.5, width: 29, height: 26 };
/** Before the first beat this much is shown, s. */
const leadIn = -0.5;

export interface SchemesPaneProps {
  readonly field: FieldMarkings;
  readonly palette: PaletteName;
  /** Reading names of schemes by id. */
  readonly names: Readonly<Record<string, string>>;
  /** Opens the list from which the schemes are chosen. */
  readonly onPick: () => void;
}

/** The play against every chosen scheme at once, in step with one playhead. */
export function SchemesPane({ field, palette, names, onPick }: SchemesPaneProps): ReactNode {
  const { player } = useDesk();
  const { schemes, overall, failure } = useAnswers();
  const { scheme: chosen, mode, change } = useScreen();
  const ground = useMemo(() => watchField(field, { view: smallView, size: 'small' }), [field]);
  const end = Math.max(1, ...schemes.map(({ script }) => (script === null ? 0 : lengthOf(script))));
  useEffect(() => player.change((head) => showSpan(head, leadIn, Math.round(end * 10) / 10)), [player, end]);
  const choose = useCallback((scheme: string) => change({ scheme, mode: 'watch', trial: undefined }), [change]);
  return (
    <div className={styles.pane}>
      <OverallLine overall={overall} count={schemes.length} onPick={onPick} />
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

function lengthOf({ trace, began }: NonNullable<SchemeAnswer['script']>): number {
  return (trace.frames - 1) * trace.step - began;
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
  const { scheme, cast, script, goals, trials, state, change, looks, reason } = answer;
  const moment = useMemo(() => {
    if (cast === null || script === null) return undefined;
    const names = traceNames(cast);
    return (head: Playhead) => {
      const time = Math.min(head.time, head.to) + script.began;
      return watchScene(script.trace, time, names, {
        ...smallWatchOptions,
        view: smallView,
        open: openAt(script, time),
      });
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
      firstLook={first === undefined ? '' : `${lookName(first)}, ${Math.round(100 * first.share)} %`}
      refused={reason ?? undefined}
      chosen={chosen}
      onChoose={useCallback(() => onChoose(scheme), [onChoose, scheme])}
    />
  );
}
