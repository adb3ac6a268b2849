import type { SchemeView } from './scheme.ts';

/** The perimeter as a closed ring with the ball in one seat. */
export interface Seats {
  size: number;
  /** Seat of the ball in `man`; -1 when he is on the crease or left out. */
  ball: number;
  /** Offense index in each seat, the offense's left to right. */
  readonly man: Int8Array;
}

export function createSeats(): Seats {
  return { size: 0, ball: -1, man: new Int8Array(6) };
}

/** Read the ring, leaving out man `leftOut` (-1 for nobody): one whom a lock takes out of the others' hands. */
export function readSeatsInto(view: SchemeView, ball: number, leftOut: number, out: Seats): void {
  let size = 0;
  let seat = -1;
  for (let i = 0; i < view.ringSize; i++) {
    const man = view.ring[i];
    if (man === leftOut) continue;
    if (man === ball) seat = size;
    out.man[size++] = man;
  }
  out.size = size;
  out.ball = seat;
}

/**
 * The man `steps` seats from the ball toward `side` (+1 the order of the ring, -1 against it); steps may be negative.
 *
 * -1 when the ring is too small to have such a man, so that nobody is counted twice: with `size` 4 steps run from -1 to 2.
 */
export function fromBall(seats: Seats, side: 1 | -1, steps: number): number {
  const { size, ball } = seats;
  if (ball < 0) return -1;
  if (2 * steps > size || -2 * steps >= size) return -1;
  return seats.man[(ball + side * steps + size) % size];
}

/** Seat of a man, -1 if he has none. */
export function seatOf(seats: Seats, man: number): number {
  for (let seat = 0; seat < seats.size; seat++) if (seats.man[seat] === man) return seat;
  return -1;
}
