import { useMemo } from 'react';
import type { Play } from '../../engine/index.ts';
import { type PlayEntry, type PlayGround, playTiming } from '../../playbook/index.ts';
import { type TempoChart, tempoAsWritten, tempoChart, tempoOfTrace, windowsOfLooks } from '../../render/index.ts';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import type { ShownTrial } from '../schemes/watch-field.tsx';

/**
 * The play over time: as it is written, or as it went in the trial that is watched; with what comes open against the scheme that is
 * looked at.
 */
export function useTempoChart(
  play: Play | undefined,
  entry: PlayEntry,
  ground: PlayGround,
  answer: SchemeAnswer | undefined,
  watched: ShownTrial | undefined,
): TempoChart | undefined {
  const looks = answer?.report?.looks;
  const trace = watched?.trace;
  return useMemo(() => {
    if (play === undefined) return undefined;
    const tempo = trace === undefined ? tempoAsWritten(play, playTiming(entry, ground)) : tempoOfTrace(play, trace);
    return tempoChart(play, tempo, windowsOfLooks(looks ?? []));
  }, [play, entry, ground, looks, trace]);
}
