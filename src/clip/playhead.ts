/** What of a film is shown, and whether it goes on by itself. */
export interface Playhead {
  /** Seconds from the film's start. */
  readonly time: number;
  readonly running: boolean;
  /** Seconds of film a second, > 0. */
  readonly speed: number;
}

/** The longest that one picture may stand for, s: who comes back to a page that was hidden finds it where he left it. */
const longestFrame = 0.1;

/** `seconds` later: it stops at the film's end. */
export function advance(head: Playhead, seconds: number, end: number): Playhead {
  if (!head.running) return head;
  const time = Math.min(head.time + Math.min(Math.max(seconds, 0), longestFrame) * head.speed, end);
  return { ...head, time, running: time < end };
}

/** Plays what stands and stops what plays; at the end it begins anew. */
export function toggle(head: Playhead, end: number): Playhead {
  if (head.running) return { ...head, running: false };
  return { ...head, time: head.time >= end - 1e-6 ? 0 : head.time, running: true };
}

/** Stands at `time`, kept inside the film. */
export function standAt(head: Playhead, time: number, end: number): Playhead {
  return { ...head, time: Math.min(Math.max(time, 0), end), running: false };
}
