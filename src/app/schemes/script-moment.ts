import type { ScriptTrace } from '../../engine/index.ts';
import { frameAt, type LaneOdds, lanesAt, type OpenMan, openMenAt } from '../../render/index.ts';

/** The lanes of the man who has the ball at a time of the trace, s; none while nobody has it. */
export function lanesOf({ trace, weighed }: ScriptTrace, time: number): readonly LaneOdds[] {
  const { holder } = frameAt(trace, time);
  return holder.kind === 'attacker' ? lanesAt(weighed, time, holder.index) : [];
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
