import { advance, type Playhead, restingPlayhead } from './playhead.ts';

/**
 * Owns time and nothing else. Who draws listens to `onFrame`, outside React; who shows buttons listens to `onChange`, which is quiet
 * while the playhead only moves.
 */
export interface Player {
  readonly head: () => Playhead;
  readonly change: (next: (head: Playhead) => Playhead) => void;
  /** Time stands still while it is held, and goes on from there: what is shown is about to be another. It stays running meanwhile. */
  readonly hold: (held: boolean) => void;
  /** Called with the playhead for every picture while it runs, and once, at the next picture, after changes. */
  readonly onFrame: (listener: (head: Playhead) => void) => () => void;
  /** Called when anything but the time of a running playhead changes. */
  readonly onChange: (listener: () => void) => () => void;
}

/** Seconds after which a picture that came late counts as no longer: a tab that slept does not jump. */
const longestStep = 0.1;

/** A player at rest. `schedule` is `requestAnimationFrame`. */
export function createPlayer(schedule: (callback: (nowMs: number) => void) => unknown): Player {
  let head = restingPlayhead;
  let lastMs: number | undefined;
  let scheduled = false;
  let isHeld = false;
  /** Something has changed that no picture shows yet. */
  let isStale = false;
  const frameListeners = new Set<(head: Playhead) => void>();
  const changeListeners = new Set<() => void>();

  const draw = (): void => {
    isStale = false;
    for (const listener of frameListeners) listener(head);
  };
  const tick = (nowMs: number): void => {
    scheduled = false;
    const before = head;
    if (!head.running || isHeld) {
      lastMs = undefined;
      if (isStale) draw();
      return;
    }
    head = advance(head, lastMs === undefined ? 0 : Math.min((nowMs - lastMs) / 1000, longestStep));
    lastMs = nowMs;
    draw();
    if (before.running !== head.running) for (const listener of changeListeners) listener();
    keepGoing();
  };
  const keepGoing = (): void => {
    if (scheduled || !(isStale || (head.running && !isHeld))) return;
    scheduled = true;
    schedule(tick);
  };

  return {
    head: () => head,
    change: (next) => {
      const before = head;
      head = next(head);
      if (head === before) return;
      if (!head.running) lastMs = undefined;
      isStale = true;
      for (const listener of changeListeners) listener();
      keepGoing();
    },
    hold: (held) => {
      isHeld = held;
      keepGoing();
    },
    onFrame: (listener) => listenIn(frameListeners, listener),
    onChange: (listener) => listenIn(changeListeners, listener),
  };
}

function listenIn<Listener>(listeners: Set<Listener>, listener: Listener): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
