/** Where the playhead is and how it moves: plain data, seconds after the play's first beat. */
export interface Playhead {
  readonly time: number;
  /** First and last instant that is shown, s. */
  readonly from: number;
  readonly to: number;
  readonly running: boolean;
  /** Seconds of play in a second of watching. */
  readonly speed: number;
  /** At the end it begins again; otherwise it stops there. */
  readonly loops: boolean;
}

export const speeds = [0.25, 0.5, 1, 2] as const;

export const restingPlayhead: Playhead = { time: 0, from: 0, to: 0, running: false, speed: 1, loops: true };

/** Held at the end for this long before it begins again, so that the last picture can be read. Seconds of watching. */
export const pauseAtEnd = 0.8;

/**
 * The playhead after `elapsed` seconds of watching. A loop holds its last picture for `pauseAtEnd`: until then `time` runs on
 * beyond `to`, and whoever draws takes the last picture.
 */
export function advance(head: Playhead, elapsed: number): Playhead {
  if (!head.running || !(elapsed > 0)) return head;
  const length = head.to - head.from;
  if (!(length > 0)) return head;
  const time = head.time + elapsed * head.speed;
  const rest = pauseAtEnd * head.speed;
  if (time <= head.to + (head.loops ? rest : 0)) return { ...head, time };
  if (!head.loops) return { ...head, time: head.to, running: false };
  return { ...head, time: head.from + ((time - head.from) % (length + rest)) };
}

/** The playhead at `time`, held inside what is shown. */
export function seek(head: Playhead, time: number): Playhead {
  return { ...head, time: Math.min(Math.max(time, head.from), head.to) };
}

/** What is shown has another length now; the playhead stays where it is as far as it can. */
export function showSpan(head: Playhead, from: number, to: number): Playhead {
  if (head.from === from && head.to === to) return head;
  return seek({ ...head, from, to }, head.time);
}

/** The first of `marks` (ascending) after the playhead, or the last one before it; the end of what is shown when there is none. */
export function nearestMark(head: Playhead, marks: readonly number[], direction: 1 | -1): number {
  const apart = 0.02;
  if (direction === 1) return marks.find((mark) => mark > head.time + apart && mark <= head.to) ?? head.to;
  return marks.filter((mark) => mark < head.time - apart && mark >= head.from).at(-1) ?? head.from;
}
