import type { ScriptTrace, WeighedMoments } from '../../engine/index.ts';
import { type LaneOdds, type OpenMan, openMenAt } from '../../render/index.ts';

/** What was weighed is this old at most when it is still drawn, s: the ball may have been on the ground since. */
const freshFor = 0.25;

/** The lanes of the man who has the ball at a time of the trace, s; none while nobody has it. */
export function lanesAt(weighed: WeighedMoments, time: number): readonly LaneOdds[] {
  const moment = momentAt(weighed, time);
  if (moment < 0) return [];
  const hand = weighed.hand_byMoment[moment]!;
  return [0, 1, 2, 3, 4, 5]
    .filter((mate) => mate !== hand)
    .map((mate) => ({ to: mate, completion: weighed.completion_byMate[moment * 6 + mate]! }))
    .filter(({ completion }) => completion > 0);
}

/** The newest moment that is not after a time and still fresh; -1 when there is none. */
export function momentAt({ time_byMoment }: WeighedMoments, time: number): number {
  let [low, high] = [0, time_byMoment.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time_byMoment[middle]! <= time + 1e-6) low = middle + 1;
    else high = middle;
  }
  const found = low - 1;
  return found >= 0 && time - time_byMoment[found]! <= freshFor ? found : -1;
}

/** Who is open at a time of the trace, s, whether anybody sees it or not. */
export function openAt({ windows, trial, began }: ScriptTrace, time: number): readonly OpenMan[] {
  return openMenAt(windows, trial, time - began);
}

/** Seconds of the trace at which something happens that one may want to look at: beats, throws, catches, looks, shots. */
export function eventTimes({ trace, began, windows }: ScriptTrace): readonly number[] {
  const kinds = new Set(['beat', 'pass', 'catch', 'shot', 'goal', 'save', 'dropped', 'intercepted', 'fake', 'bite']);
  const times = [
    ...trace.events.filter(({ kind }) => kinds.has(kind)).map(({ time }) => time - began),
    ...windows.map(({ opens }) => opens),
  ];
  return [...new Set(times.map((time) => Math.round(time * 100) / 100))].sort((a, b) => a - b);
}
