import { block, unit as unitOf } from '../random/draws.ts';
import { drawAddress } from './draw-address.ts';
import { drawKind } from './draw-kinds.ts';
import type { ChanceModel } from './model.ts';
import { type ChanceState, stride } from './state.ts';
import { fakeSeconds } from './timing.ts';

/** Who can bite: a defender this near to the man who is shown the ball, to the way the ball would take, or to the carrier. Yards. */
const fakeReach = 6;
const laneReach = 3;
const handsReach = 3;
/**
 * What a bite costs: mean and spread of the time lost, s. Henry et al. 2012 (J Sports Sci 30:787) measured +509 +- 243 ms
 * on a reactive agility run with a fake.
 */
const biteMean = 0.509;
const biteSpread = 0.243;
/** A man cannot be faked again at once: he has just been burnt. Seconds. */
const fakeRest = 1.5;

/** The carrier shows a pass to a mate; every defender near that mate may bite. */
export function fakeTo(model: ChanceModel, state: ChanceState, toward: number): void {
  const { unit, ball, coverage } = state;
  const carrier = ball.holder;
  unit.fakeTo[carrier] = -1;
  unit.fakedUntil[carrier] = state.time + fakeRest;
  ball.nextDecision = state.time + fakeSeconds;
  state.recorder?.event({ kind: 'fake', time: state.time, who: carrier, toward });
  for (let defender = 0; defender < model.covering; defender++) {
    if (!canBite(state, defender, carrier, toward)) continue;
    const agent = 6 + defender;
    block(model.draws, state.trial, agent, drawKind.bite, drawAddress(model, state, drawKind.bite, agent));
    const bites = unitOf(model.draws.words[0]) < model.athletes[agent].bite;
    if (!bites) continue;
    const seconds = Math.max(0.1, biteMean + biteSpread * (2 * unitOf(model.draws.words[1]) - 1) * Math.sqrt(3));
    coverage.bittenTo[defender] = toward;
    coverage.bittenFrom[defender] = state.time + model.reaction_byAgent[agent];
    coverage.bittenUntil[defender] = coverage.bittenFrom[defender] + seconds;
    state.recorder?.event({ kind: 'bite', time: state.time, by: defender, seconds });
  }
}

/** Whether this defender has to believe it: he plays the man who is shown the ball, the lane to him, or the carrier's hands. */
function canBite(state: ChanceState, defender: number, carrier: number, toward: number): boolean {
  const { motion } = state.bodies;
  const at = stride * (6 + defender);
  const dx = motion[at] - motion[stride * carrier];
  const dy = motion[at + 1] - motion[stride * carrier + 1];
  const wayX = motion[stride * toward] - motion[stride * carrier];
  const wayY = motion[stride * toward + 1] - motion[stride * carrier + 1];
  const awayX = dx - wayX;
  const awayY = dy - wayY;
  if (awayX * awayX + awayY * awayY < fakeReach * fakeReach) return true;
  if (dx * dx + dy * dy < handsReach * handsReach) return true;
  const way = wayX * wayX + wayY * wayY;
  const along = dx * wayX + dy * wayY;
  const across = dx * wayY - dy * wayX;
  return along > 0 && along < way && across * across < laneReach * laneReach * way;
}
