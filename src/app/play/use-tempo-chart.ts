import { useMemo } from 'react';
import type { Play } from '../../engine/index.ts';
import { playTiming, type ScriptName } from '../../playbook/index.ts';
import { type TempoChart, tempoAsWritten, tempoChart, tempoOfTrace, windowsOfLooks } from '../../render/index.ts';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import type { ShownTrial } from '../schemes/watch-field.tsx';
import type { PlayEditor } from './use-play-editor.ts';

/**
 * The play over time: as it is written, or as it went in the trial that is watched; with what comes open against the scheme that is
 * looked at.
 */
export function useTempoChart(
  play: Play,
  script: ScriptName,
  { entry, ground }: PlayEditor,
  answer: SchemeAnswer | undefined,
  watched: ShownTrial | undefined,
): TempoChart {
  const looks = answer?.report?.looks;
  const trace = watched?.trace;
  return useMemo(() => {
    const tempo =
      trace === undefined ? tempoAsWritten(play, playTiming(entry, ground, { script })) : tempoOfTrace(play, trace);
    return tempoChart(play, tempo, windowsOfLooks(looks ?? []));
  }, [play, script, entry, ground, looks, trace]);
}
