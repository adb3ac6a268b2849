import { type DutyBoard, duty } from './duty.ts';
import { giveBall, giveMan } from './give.ts';
import type { SchemeView } from './scheme.ts';

/** An attacker this near the goal and not behind it is always somebody's business, yards. */
export const doorstepRadius = 4;

/**
 * What no scheme leaves undone, whatever the set has become: a ball in front of the goal line is somebody's ball,
 * and a man at the doorstep is somebody's man while there is a defender to spare.
 */
export function coverDangers(view: SchemeView, ball: number, home: readonly number[], out: DutyBoard): void {
  const defenders = out.kind.length;
  if (view.offense[2 * ball + 1] >= 0 && !hasBall(out, ball, defenders)) {
    const defender = spareDefender(view, ball, out, defenders);
    if (defender >= 0) giveBall(view, out, defender, ball, 1);
  }
  for (let man = 0; man < 6; man++) {
    const x = view.offense[2 * man];
    const y = view.offense[2 * man + 1];
    if (y < 0 || x * x + y * y > doorstepRadius * doorstepRadius || isNamed(out, man, defenders)) continue;
    const defender = spareDefender(view, man, out, defenders);
    if (defender >= 0) giveMan(view, out, defender, man, home);
  }
}

function hasBall(out: DutyBoard, ball: number, defenders: number): boolean {
  for (let i = 0; i < defenders; i++) if (out.kind[i] === duty.ball && out.a[i] === ball) return true;
  return false;
}

function isNamed(out: DutyBoard, man: number, defenders: number): boolean {
  return countNamed(out, man, defenders) > 0;
}

function countNamed(out: DutyBoard, man: number, defenders: number): number {
  let count = 0;
  for (let i = 0; i < defenders; i++) if (out.a[i] === man || out.b[i] === man) count++;
  return count;
}

/** What can best be given up, by duty kind in the order of `dutyNames`: a place first, a lock last, the ball (Infinity) never. */
const price: readonly number[] = [0, Number.POSITIVE_INFINITY, 12, 4, 8, 30, 6, 14];

/** The defender to send: cheap duty and near the man. The only one who has a man at the doorstep does not leave him. */
function spareDefender(view: SchemeView, man: number, out: DutyBoard, defenders: number): number {
  let best = -1;
  let bestPrice = Number.POSITIVE_INFINITY;
  for (let i = 0; i < defenders; i++) {
    if (isNeeded(view, out.a[i], out, defenders) || isNeeded(view, out.b[i], out, defenders)) continue;
    const dx = view.defense[2 * i] - view.offense[2 * man];
    const dy = view.defense[2 * i + 1] - view.offense[2 * man + 1];
    const total = price[out.kind[i]] + Math.sqrt(dx * dx + dy * dy);
    if (total < bestPrice) {
      best = i;
      bestPrice = total;
    }
  }
  return best;
}

/** Whether leaving `man` would leave him alone at the doorstep. */
function isNeeded(view: SchemeView, man: number, out: DutyBoard, defenders: number): boolean {
  if (man < 0) return false;
  const x = view.offense[2 * man];
  const y = view.offense[2 * man + 1];
  return y >= 0 && x * x + y * y <= doorstepRadius * doorstepRadius && countNamed(out, man, defenders) < 2;
}
