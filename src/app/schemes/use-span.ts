import { useEffect } from 'react';
import { traceEnd } from '../../render/index.ts';
import type { SchemeAnswer } from '../answers/answers-snapshot.ts';
import type { WatchedTrial } from '../play/screen-state.ts';
import type { Player } from '../playback/player.ts';
import { showSpan } from '../playback/playhead.ts';
import type { ShownTrial } from './watch-field.tsx';

/** Before the first beat this much is shown, s. */
const leadIn = 0.5;

/** Lets the clock run over all that there is to see: the longest of the scripts, and the trial that was asked for. */
export function useSpan(
  player: Player,
  schemes: readonly SchemeAnswer[],
  shown: ShownTrial | undefined,
  wanted: WatchedTrial | undefined,
): void {
  const scripts = schemes.flatMap(({ script }) => (script === null ? [] : [traceEnd(script.trace) - script.began]));
  const own = shown === undefined || wanted === undefined ? [] : [traceEnd(shown.trace) - shown.began];
  const to = Math.round(10 * Math.max(1, ...scripts, ...own)) / 10;
  // A whole chance begins long before the play does.
  const from = wanted?.of === 'chance' && shown !== undefined ? -shown.began : -leadIn;
  useEffect(() => player.change((head) => showSpan(head, from, to)), [player, from, to]);
}
