import type { BenchEvent, BenchSettings } from './bench-event.ts';

/** The clock of the game at a moment. */
export interface GameClock {
  /** The moment by the clock of the device, s since 1970. */
  readonly wall: number;
  /** From 1. */
  readonly period: number;
  /** Left in the period, s. */
  readonly left: number;
  readonly running: boolean;
  /** Seconds of play since the game began: what penalties go by. */
  readonly played: number;
}

/** The clock before the first tap: all of the first period is left, and nothing runs. */
export function clockAtStart({ periodSeconds }: Pick<BenchSettings, 'periodSeconds'>, wall: number): GameClock {
  return { wall, period: 1, left: periodSeconds, running: false, played: 0 };
}

/** The clock at a later moment. It stops by itself when the period is over, and stands where the device's clock was set back. */
export function clockLater(clock: GameClock, wall: number): GameClock {
  if (wall <= clock.wall) return clock;
  if (!clock.running) return { ...clock, wall };
  const passed = Math.min(wall - clock.wall, clock.left);
  const left = clock.left - passed;
  return { ...clock, wall, left, played: clock.played + passed, running: left > 0 };
}

/**
 * The clock after a tap that is made at its moment. `boxedAt` is when something last happened to the box, s of play: a clock that is set back takes the
 * penalties with it, but never to before they were given.
 */
export function clockAfter(
  clock: GameClock,
  event: BenchEvent,
  { periodSeconds, runningTime }: Pick<BenchSettings, 'periodSeconds' | 'runningTime'>,
  boxedAt: number,
): GameClock {
  switch (event.kind) {
    case 'clock':
      return { ...clock, running: event.does === 'start' && clock.left > 0 };
    case 'clockSet':
      return clockSet(clock, event, boxedAt);
    case 'period':
      return { ...clock, period: event.period, left: periodSeconds, running: false };
    default:
      return !runningTime && isWhistle(event) ? { ...clock, running: false } : clock;
  }
}

// Set within a period, the table's clock says how much was really played; that of another period says nothing of that.
function clockSet(
  clock: GameClock,
  { period, left }: Extract<BenchEvent, { kind: 'clockSet' }>,
  boxedAt: number,
): GameClock {
  const isSame = period === clock.period;
  const played = isSame ? Math.max(boxedAt, clock.played + clock.left - left) : clock.played;
  return { ...clock, period, left, played, running: clock.running && left > 0 };
}

/** Whether play stops with it. */
function isWhistle(event: BenchEvent): boolean {
  if (event.kind === 'result') return event.result === 'goal';
  return event.kind === 'fouls' || event.kind === 'goal' || event.kind === 'timeout' || event.kind === 'flagOff';
}
