import { coverDangers } from '../cover.ts';
import { nearCrease } from '../crease.ts';
import type { DutyBoard } from '../duty.ts';
import { giveBall, giveFront, giveMan, giveSplit } from '../give.ts';
import type { Scheme, SchemeMemory, SchemeView } from '../scheme.ts';
import { createSeats, fromBall, readSeatsInto } from '../seats.ts';
import { playedBall, readSide, readZones, zoneMemory } from '../zones.ts';

/** Six on six: three on top, two low, one inside (yards common practice, no source). */
const home = [5, 11, -5, 11, 6, 4, -6, 4, 0, 5, 0, 12] as const;
const defenders = 6;

const creaseSlot = zoneMemory;
const slideSlot = zoneMemory + 1;
const matchSlot = zoneMemory + 2;
const seats = createSeats();

// When a carrier has beaten his man (ours).
/** He runs inside this distance from the goal, yards. */
const slideWithin = 9.5;
/** His man is no longer goal side: less than this nearer the goal than he is, yards. */
const goalSideMargin = 0.2;

/** Even strength: man to man, one slide from the crease and a second man to fill behind it. */
export const settled: Scheme = {
  id: 'settled-six',
  notes: {
    name: 'Settled six',
    summary: 'Six on six, man to man; when the carrier beats his man the crease man slides and the farthest man fills.',
    leaves: 'The man farthest from the ball once the slide has gone.',
  },
  defenders,
  names: ['tr', 'tl', 'lr', 'll', 'c', 'm'],
  shortSticks: [0, 1, 5],
  home,
  memorySize: zoneMemory + 8,
  extends: 14,
  assign(view, memory, out) {
    readZones(view, memory);
    const ball = playedBall(view, memory);
    const side = readSide(view, memory, ball);
    const first = nearCrease(view, memory, creaseSlot, ball);
    readSeatsInto(view, ball, -1, seats);
    if (memory[matchSlot] === 0) matchUp(view, memory);
    for (let man = 0; man < 6; man++) {
      const defender = memory[matchSlot + man] - 1;
      if (man === ball) giveBall(view, out, defender, man, side);
      else if (view.inside[man] === 1) giveFront(view, out, defender, man, home);
      else giveMan(view, out, defender, man, home);
    }
    if (isBeaten(view, memory, ball)) slide(view, memory, ball, first, side, out);
    coverDangers(view, ball, home, out);
  },
};

/** Each takes a man once, the closest pair first and then swapped while that brings two of them nearer; they keep them through the chance. */
function matchUp(view: SchemeView, memory: SchemeMemory): void {
  let taken = 0;
  for (let round = 0; round < 6; round++) {
    let bestMan = -1;
    let bestDefender = -1;
    let bestSquare = Number.POSITIVE_INFINITY;
    for (let man = 0; man < 6; man++) {
      if (memory[matchSlot + man] !== 0) continue;
      for (let defender = 0; defender < defenders; defender++) {
        if (taken & (1 << defender)) continue;
        const square = homeSquare(view, defender, man);
        if (square < bestSquare) {
          bestSquare = square;
          bestMan = man;
          bestDefender = defender;
        }
      }
    }
    memory[matchSlot + bestMan] = bestDefender + 1;
    taken |= 1 << bestDefender;
  }
  for (let round = 0; round < 6 && swapPairs(view, memory); round++);
}

/** One round of swaps of two men's defenders; true if there was one. */
function swapPairs(view: SchemeView, memory: SchemeMemory): boolean {
  let hasSwapped = false;
  for (let one = 0; one < 6; one++) {
    for (let other = one + 1; other < 6; other++) {
      const a = memory[matchSlot + one];
      const b = memory[matchSlot + other];
      const now = homeSquare(view, a - 1, one) + homeSquare(view, b - 1, other);
      if (homeSquare(view, b - 1, one) + homeSquare(view, a - 1, other) >= now) continue;
      memory[matchSlot + one] = b;
      memory[matchSlot + other] = a;
      hasSwapped = true;
    }
  }
  return hasSwapped;
}

/** Squared distance of a man from a defender's home. */
function homeSquare(view: SchemeView, defender: number, man: number): number {
  const dx = home[2 * defender] - view.sense * view.offense[2 * man];
  const dy = home[2 * defender + 1] - view.offense[2 * man + 1];
  return dx * dx + dy * dy;
}

/** Once the slide has gone it stays until the ball leaves the carrier. */
function isBeaten(view: SchemeView, memory: SchemeMemory, ball: number): boolean {
  if (memory[slideSlot] === ball + 1) return true;
  memory[slideSlot] = 0;
  const x = view.offense[2 * ball];
  const y = view.offense[2 * ball + 1];
  if (!view.carrying || y < 0 || x * x + y * y > slideWithin * slideWithin) return false;
  const defender = memory[matchSlot + ball] - 1;
  const dx = view.defense[2 * defender];
  const dy = view.defense[2 * defender + 1];
  const isPast = Math.sqrt(dx * dx + dy * dy) > Math.sqrt(x * x + y * y) - goalSideMargin;
  if (isPast) memory[slideSlot] = ball + 1;
  return isPast;
}

function slide(
  view: SchemeView,
  memory: SchemeMemory,
  ball: number,
  first: number,
  side: 1 | -1,
  out: DutyBoard,
): void {
  const left = first >= 0 && first !== ball ? first : farthest(view, ball, -1);
  const slider = memory[matchSlot + left] - 1;
  giveBall(view, out, slider, ball, side);
  const farMan = farthest(view, ball, left);
  const filler = memory[matchSlot + farMan] - 1;
  giveSplit(view, out, filler, left, farMan, home);
}

/** The perimeter man farthest round the ring from the ball; any other man when there is none. */
function farthest(view: SchemeView, ball: number, except: number): number {
  for (let steps = 3; steps > 0; steps--) {
    const after = fromBall(seats, 1, steps);
    if (after >= 0 && after !== except) return after;
    const before = fromBall(seats, 1, -steps);
    if (before >= 0 && before !== except) return before;
  }
  for (let man = 0; man < 6; man++) if (man !== ball && man !== except && view.inside[man] === 0) return man;
  return ball === 0 || except === 0 ? (ball === 1 || except === 1 ? 2 : 1) : 0;
}
