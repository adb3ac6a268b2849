import type { ChanceModel } from '../chance/model.ts';
import { type ChanceState, stride } from '../chance/state.ts';
import { duty } from '../defense/duty.ts';
import { arrivalTime } from '../people/reach.ts';

/** Who should have been there, his duty (a number of `duty`), and how late he is, s. `leftBy` is -1 when nobody was meant to. */
export interface Left {
  readonly leftBy: number;
  readonly duty: number;
  readonly lateBy: number;
}

/** A shooter is covered by a body this near to him. Yards. */
const covered = 1.5;

/**
 * The defender whose duty names the open man (the nearest of them), and how much later than the ball he can be on him.
 * A scheme that gives the man to nobody leaves him open on purpose.
 */
export function whoLeft(model: ChanceModel, state: ChanceState, from: number, to: number): Left {
  const { motion } = state.bodies;
  const x = motion[stride * to];
  const y = motion[stride * to + 1];
  const ballTime = timeOfBall(model, state, from, to);
  let left: Left = { leftBy: -1, duty: duty.place, lateBy: 0 };
  let least = Number.POSITIVE_INFINITY;
  for (let defender = 0; defender < model.covering; defender++) {
    if (!hasDutyOn(state, defender, to)) continue;
    const needs = timeToMan(model, state, defender, x, y);
    if (needs >= least) continue;
    least = needs;
    left = { leftBy: defender, duty: state.coverage.wanted.kind[defender], lateBy: Math.max(0, needs - ballTime) };
  }
  return left;
}

function hasDutyOn(state: ChanceState, defender: number, man: number): boolean {
  const { wanted } = state.coverage;
  if (wanted.kind[defender] === duty.place) return false;
  return wanted.a[defender] === man || (wanted.kind[defender] === duty.split && wanted.b[defender] === man);
}

/** From now until he is on the man: his reaction and his run. */
function timeToMan(model: ChanceModel, state: ChanceState, defender: number, x: number, y: number): number {
  const { motion } = state.bodies;
  const agent = 6 + defender;
  const at = stride * agent;
  const { topSpeed, drag } = model.movers;
  const run = arrivalTime(
    topSpeed[agent],
    drag[agent],
    motion[at],
    motion[at + 1],
    motion[at + 2],
    motion[at + 3],
    x,
    y,
    covered,
  );
  return run === 0 ? 0 : run + model.reaction_byAgent[agent];
}

/** From now until the shot leaves: the flight of the pass and the receiver's release. */
function timeOfBall(model: ChanceModel, state: ChanceState, from: number, to: number): number {
  const release = model.athletes[to].shotRelease;
  if (from === to) return release;
  const { motion } = state.bodies;
  const dx = motion[stride * to] - motion[stride * from];
  const dy = motion[stride * to + 1] - motion[stride * from + 1];
  return Math.sqrt(dx * dx + dy * dy) / model.athletes[from].passSpeed + release;
}
