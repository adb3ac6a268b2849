import type { Movement, MovementId } from './movement.ts';
import type { Standing, WalkedLap, WalkedTouch } from './walked-lap.ts';

/** What can be seen of a man-down unit from the bench, yes or no, without film. */
export const signIds = [
  'crease-glued',
  'crease-man-out',
  'crease-man-follows',
  'one-in-front',
  'two-in-front',
  'changed-places',
  'there-on-catch',
  'two-on-ball',
  'skip-lane',
  'both-pipes',
  'goes-behind',
  'carrier-passed-on',
  'man-follows',
  'locked-man',
] as const;
export type SignId = (typeof signIds)[number];

/** A sign, and how it is judged in what was walked through. */
export interface Sign {
  readonly id: SignId;
  /** The movements that show it, the best one first. */
  readonly shownBy: readonly MovementId[];
  /** Whether it was there; `null` when this set or movement cannot show it. */
  sees(lap: WalkedLap, movement: Movement): boolean | null;
}

const laps = ['lap-right', 'lap-left', 'reverse', 'skip'] as const;

// Distances at which people say so (common practice, no source). Yards.
/** On a man: a stick and a step. */
const onHim = 3;
/** With him whatever the ball does: a lock may cheat a step or two to the next man. */
const withHim = 3.6;
/** Waiting on a pipe. */
const onPipe = 2.5;
/** Men of one row stand within this of its front man. */
const row = 2.5;
/** A man who is this far from where he was has another place. */
const elsewhere = 5;
/** There when the ball comes. */
const there = 4.5;
/** A man has come out from the crease when he was there within so many touches. */
const touchesAgo = 3;
/** In the line of a pass. */
const inLane = 1.5;

/** Every sign, each judged by where men stand: nothing is known of duties that could not be seen from the bench. */
export const signs: readonly Sign[] = [
  {
    id: 'crease-glued',
    shownBy: laps,
    sees: (lap) =>
      overCrease(lap, (crease) =>
        menOf(lap).some((man) =>
          lap.touches.every(({ ball, end }) => ball === crease || apart(end, man, crease) <= onHim),
        ),
      ),
  },
  {
    id: 'crease-man-out',
    shownBy: laps,
    sees: (lap) =>
      overCrease(lap, (crease) =>
        lap.touches.some((touch, at) => {
          if (!isOnTop(touch)) return false;
          const onBall = nearest(touch.end, touch.ball, lap.men);
          return (
            apart(touch.end, onBall, touch.ball) <= there &&
            lap.touches
              .slice(Math.max(0, at - touchesAgo), at)
              .some(({ end }) => nearest(end, crease, lap.men) === onBall && apart(end, onBall, crease) <= onHim)
          );
        }),
      ),
  },
  {
    id: 'crease-man-follows',
    shownBy: ['pop'],
    sees: (lap, movement) => {
      const [crease] = movement.movers;
      const [, before] = lap.touches;
      const after = lap.touches.at(-1);
      if (movement.id !== 'pop' || crease === undefined || before === undefined || after === undefined) return null;
      return apart(after.end, nearest(before.end, crease, lap.men), crease) <= onHim + 0.5;
    },
  },
  { id: 'one-in-front', shownBy: laps, sees: (lap) => overTop(lap, ({ end }) => frontRow(end, lap.men) === 1) },
  { id: 'two-in-front', shownBy: laps, sees: (lap) => overTop(lap, ({ end }) => frontRow(end, lap.men) === 2) },
  {
    id: 'changed-places',
    shownBy: ['lap-right', 'lap-left'],
    sees: (lap) => {
      const first = lap.touches[0];
      const last = [...lap.touches].reverse().find(({ ball }) => ball === first?.ball);
      if (first === undefined || last === undefined || last === first || lap.touches.length < 5) return null;
      return menOf(lap).filter((man) => moved(first.end, last.end, man) >= elsewhere).length >= 2;
    },
  },
  {
    id: 'there-on-catch',
    shownBy: laps,
    sees: (lap) => {
      const catches = lap.touches.slice(1).filter(({ end, ball }) => yOf(end.offense, ball) > 2);
      if (catches.length < 2) return null;
      const met = catches.filter(({ came, ball }) => apart(came, nearest(came, ball, lap.men), ball) <= there);
      return 2 * met.length > catches.length;
    },
  },
  {
    id: 'two-on-ball',
    shownBy: ['skip', ...laps.slice(0, 3)],
    sees: (lap) =>
      lap.touches.some(
        ({ end, ball }) =>
          yOf(end.offense, ball) > 2 &&
          Math.hypot(end.offense[2 * ball]!, end.offense[2 * ball + 1]!) > 8 &&
          menOf(lap).filter((man) => apart(end, man, ball) <= onHim + 0.5).length >= 2,
      ),
  },
  {
    id: 'skip-lane',
    shownBy: laps,
    sees: (lap) =>
      overTop(lap, ({ end, ball }) => {
        const lows = [0, 1, 2, 3, 4, 5].filter(
          (man) =>
            man !== ball &&
            yOf(end.offense, man) > 0 &&
            yOf(end.offense, man) < 7 &&
            Math.abs(end.offense[2 * man]!) > 5,
        );
        return lows.some((low) => menOf(lap).some((man) => stands(end, man, ball, low)));
      }),
  },
  {
    id: 'both-pipes',
    shownBy: ['behind', ...laps],
    sees: (lap) =>
      overBehind(lap, ({ end }) =>
        [-1, 1].every((side) =>
          menOf(lap).some(
            (man) => Math.hypot(end.defense[2 * man]! - 2.2 * side, end.defense[2 * man + 1]! - 1.2) <= onPipe,
          ),
        ),
      ),
  },
  {
    id: 'goes-behind',
    shownBy: ['behind', ...laps],
    sees: (lap) => overBehind(lap, ({ end }) => menOf(lap).some((man) => yOf(end.defense, man) < -0.5)),
  },
  {
    id: 'carrier-passed-on',
    shownBy: ['carry'],
    sees: (lap, movement) => {
      const [before, after] = lap.touches;
      if (movement.id !== 'carry' || before === undefined || after === undefined) return null;
      return nearest(before.end, before.ball, lap.men) !== nearest(after.end, after.ball, lap.men);
    },
  },
  {
    id: 'man-follows',
    shownBy: ['swap'],
    sees: (lap, movement) => {
      const [, before, after] = lap.touches;
      if (movement.id !== 'swap' || before === undefined || after === undefined) return null;
      return movement.movers.some((mover) =>
        menOf(lap).some((man) => apart(before.end, man, mover) <= withHim && apart(after.end, man, mover) <= withHim),
      );
    },
  },
  {
    id: 'locked-man',
    shownBy: laps,
    sees: (lap) => {
      if (lap.touches.length < 3) return null;
      const crease = creaseMan(lap);
      return [0, 1, 2, 3, 4, 5].some((mate) => {
        const away = lap.touches.filter(({ ball }) => ball !== mate);
        return (
          mate !== crease &&
          away.length >= 2 &&
          menOf(lap).some((man) => away.every(({ end }) => apart(end, man, mate) <= withHim))
        );
      });
    },
  },
];

function menOf({ men }: WalkedLap): readonly number[] {
  return Array.from({ length: men }, (_, man) => man);
}

function yOf(places: Float64Array, man: number): number {
  return places[2 * man + 1]!;
}

/** How far a defender is from one of the six. */
function apart({ offense, defense }: Standing, man: number, mate: number): number {
  return Math.hypot(defense[2 * man]! - offense[2 * mate]!, defense[2 * man + 1]! - offense[2 * mate + 1]!);
}

function nearest(standing: Standing, mate: number, men: number): number {
  let best = 0;
  for (let man = 1; man < men; man++) if (apart(standing, man, mate) < apart(standing, best, mate)) best = man;
  return best;
}

function moved(one: Standing, other: Standing, man: number): number {
  return Math.hypot(
    one.defense[2 * man]! - other.defense[2 * man]!,
    one.defense[2 * man + 1]! - other.defense[2 * man + 1]!,
  );
}

/** How many stand in the front row, the goal behind them. */
function frontRow({ defense }: Standing, men: number): number {
  const ys = Array.from({ length: men }, (_, man) => yOf(defense, man));
  const front = Math.max(...ys);
  return ys.filter((y) => y >= front - row).length;
}

/** Whether a defender stands in the line of a pass, away from both its ends. */
function stands({ offense, defense }: Standing, man: number, from: number, to: number): boolean {
  const dx = offense[2 * to]! - offense[2 * from]!;
  const dy = offense[2 * to + 1]! - offense[2 * from + 1]!;
  const square = dx * dx + dy * dy;
  const px = defense[2 * man]! - offense[2 * from]!;
  const py = defense[2 * man + 1]! - offense[2 * from + 1]!;
  const along = (px * dx + py * dy) / square;
  return along > 0.25 && along < 0.85 && Math.abs(px * dy - py * dx) / Math.sqrt(square) <= inLane;
}

function isOnTop({ end, ball }: WalkedTouch): boolean {
  return yOf(end.offense, ball) >= 10;
}

/** The man inside who is nearest to the middle of the crease area; -1 for a set without one. */
function creaseMan({ touches }: WalkedLap): number {
  const first = touches[0];
  if (first === undefined) return -1;
  const { offense } = first.end;
  return [0, 1, 2, 3, 4, 5].reduce((best, man) => {
    const x = offense[2 * man]!;
    const y = yOf(offense, man);
    const isInside = Math.abs(x) < 5 && y > 1 && y < 8.5;
    return isInside && (best < 0 || Math.abs(x) < Math.abs(offense[2 * best]!)) ? man : best;
  }, -1);
}

function overCrease(lap: WalkedLap, sees: (crease: number) => boolean): boolean | null {
  const crease = creaseMan(lap);
  return crease < 0 || lap.touches.length < 2 ? null : sees(crease);
}

/** At the touch whose ball is nearest to the middle of the top. */
function overTop({ touches }: WalkedLap, sees: (touch: WalkedTouch) => boolean): boolean | null {
  const tops = touches.filter(isOnTop);
  const [first] = tops;
  if (first === undefined) return null;
  return sees(tops.reduce((best, one) => (middle(one) < middle(best) ? one : best), first));
}

function middle({ end, ball }: WalkedTouch): number {
  return Math.abs(end.offense[2 * ball]!);
}

function overBehind({ touches }: WalkedLap, sees: (touch: WalkedTouch) => boolean): boolean | null {
  const behind = touches.find(({ end, ball }) => yOf(end.offense, ball) < -1);
  return behind === undefined ? null : sees(behind);
}
