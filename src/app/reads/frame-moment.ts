/** What of a trial a frame shows before and after the cue, and how long it stands still at it. Seconds. */
const before = 1.5;
const after = 2.5;
const standing = 0.8;

/** Where a frame is: on the way to the cue, at it, or in what he does. */
export type FramePhase = 'before' | 'cue' | 'after';

/** What part of a trial a frame shows. Seconds after the restart. */
export interface FrameSpan {
  readonly cue: number;
  readonly from: number;
  readonly to: number;
}

/** From a little before the cue to a little after it, as far as the trial goes. `end` is the trial's last instant. */
export function frameSpan(cue: number, end: number): FrameSpan {
  return { cue, from: Math.max(0, cue - before), to: Math.max(cue, Math.min(end, cue + after)) };
}

/** How long it takes to watch a span once, with the standing still. Seconds of watching. */
export function frameLength({ from, to }: FrameSpan): number {
  return to - from + standing;
}

/** The instant of watching from which on the cue stands still. */
export function frameStill({ cue, from }: FrameSpan): number {
  return cue - from;
}

/** What is seen after so many seconds of watching: which instant of the trial, and which phase it is in. Beyond the end it is the last picture. */
export function frameMoment(span: FrameSpan, watched: number): { readonly time: number; readonly phase: FramePhase } {
  const { cue, from, to } = span;
  const still = frameStill(span);
  if (watched < still) return { time: from + Math.max(watched, 0), phase: 'before' };
  if (watched <= still + standing) return { time: cue, phase: 'cue' };
  return { time: Math.min(from + watched - standing, to), phase: 'after' };
}
