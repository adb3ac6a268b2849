import { memo, type ReactNode } from 'react';
import type { Interval } from '../../engine/index.ts';
import type { PaletteName, SceneLayer } from '../../render/index.ts';
import type { Player } from '../playback/player.ts';
import type { Playhead } from '../playback/playhead.ts';
import { SceneCanvas } from '../playback/scene-canvas.tsx';
import { differenceText, goalsText, setAloneGoals, setAloneText, signOf, sureness } from './goal-words.ts';
import { IntervalBar } from './interval-bar.tsx';
import styles from './scheme-card.module.css';

export interface SchemeCardProps {
  readonly name: string;
  readonly player: Player;
  readonly ground: SceneLayer;
  readonly moment: ((head: Playhead, pxPerYard: number) => SceneLayer) | undefined;
  readonly palette: PaletteName;
  /** Goals per chance so far; undefined before the first answer. */
  readonly goals: Interval | undefined;
  readonly trials: number;
  /** The answer is a first one, from few trials. */
  readonly coarse: boolean;
  /** Goals per chance more than before the last change, when that is known. */
  readonly difference: Interval | undefined;
  /** Goals per chance more than the set makes without the play, when that is known. */
  readonly overSetAlone: Interval | undefined;
  /** What comes open first, in words. */
  readonly firstLook: string;
  /** Whom the scheme shuts off, in words; empty when it shuts off nobody. */
  readonly shutOff: string;
  /** Which of the trials the small field shows, in words. */
  readonly shown: string;
  /** Why there is no answer, when there can be none. */
  readonly refused: string | undefined;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}

/** One scheme: its small live field, what the play is worth against it and how sure that is, and what comes open first. */
export const SchemeCard = memo(function SchemeCard(props: SchemeCardProps): ReactNode {
  const { name, goals, coarse, difference, firstLook, refused, shutOff } = props;
  return (
    <button
      type="button"
      className={styles.card}
      aria-pressed={props.chosen}
      aria-label={spoken(props)}
      onClick={props.onChoose}
    >
      <span className={styles.name} title={name}>
        {name}
      </span>
      <span className={styles.field}>
        <SceneCanvas
          player={props.player}
          ground={props.ground}
          moment={props.moment}
          palette={props.palette}
          words={`The play against ${name}`}
        />
      </span>
      {refused !== undefined ? (
        <span className={styles.refused}>{refused}</span>
      ) : (
        <>
          <span className={styles.goals} data-coarse={coarse}>
            {goals === undefined ? '…' : goalsText(goals.mean)}
            <span className={styles.interval}>{goals === undefined ? '' : sureness(goals)}</span>
          </span>
          <IntervalBar goals={goals} />
          <span className={styles.difference} data-sign={coarse ? 'open' : signOf(difference)}>
            {underGoals(props)}
          </span>
          <span className={styles.look}>{firstLook}</span>
          <span className={styles.shown}>{props.shown}</span>
          {shutOff !== '' && <span className={styles.look}>{shutOff}</span>}
        </>
      )}
    </button>
  );
});

/** One short line: what the last change did, or else what the set makes without the play. */
function underGoals({ goals, trials, coarse, difference, overSetAlone }: SchemeCardProps): string {
  if (difference !== undefined) return differenceText(difference);
  if (coarse) return trials > 0 ? 'first guess' : '';
  return goals === undefined || overSetAlone === undefined ? '' : `set alone ${setAloneGoals(goals, overSetAlone)}`;
}

function spoken(props: SchemeCardProps): string {
  const { name, goals, refused, coarse, difference, overSetAlone, firstLook, shown, shutOff } = props;
  if (refused !== undefined) return `${name}: ${refused}`;
  if (goals === undefined) return `${name}: being played`;
  const change = difference === undefined ? '' : `, ${differenceText(difference)} against before`;
  const look = firstLook === '' ? '' : `, first look ${firstLook}`;
  const trial = shown === '' ? '' : `, ${shown}`;
  const alone = overSetAlone === undefined || coarse ? '' : `, ${setAloneText(goals, overSetAlone)}`;
  return `${name}: ${goalsText(goals.mean)} goals a chance, ${sureness(goals)}${coarse ? ', a first guess' : ''}${change}${alone}${look}${trial}${shutOff === '' ? '' : `, ${shutOff}`}`;
}
