import { block, unit as unitOf } from '../random/draws.ts';
import { drawAddress } from './draw-address.ts';
import { drawKind } from './draw-kinds.ts';
import type { ChanceModel } from './model.ts';
import { type ChanceState, stride } from './state.ts';

/** The fake itself takes the carrier this long. Seconds. */
const fakeSeconds = 0.35;
/** Only a defender this near to the man who is shown the ball can bite. Yards. */
const fakeReach = 6;
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
    if (!canBite(state, defender, toward)) continue;
    const agent = 6 + defender;
    block(model.draws, state.trial, agent, drawKind.bite, drawAddress(model, state, drawKind.bite, agent));
    const bites = unitOf(model.draws.words[0]) < model.athletes[agent].bite;
    if (!bites) continue;
    const seconds = Math.max(0.1, biteMean + biteSpread * (2 * unitOf(model.draws.words[1]) - 1) * Math.sqrt(3));
    coverage.bittenTo[defender] = toward;
    coverage.bittenUntil[defender] = state.time + model.reaction_byAgent[agent] + seconds;
    state.recorder?.event({ kind: 'bite', time: state.time, by: defender, seconds });
  }
}

/** Whether this defender is near enough to the man who is shown the ball to believe it. */
function canBite(state: ChanceState, defender: number, toward: number): boolean {
  const { motion } = state.bodies;
  const agent = stride * (6 + defender);
  const dx = motion[agent] - motion[stride * toward];
  const dy = motion[agent + 1] - motion[stride * toward + 1];
  return dx * dx + dy * dy < fakeReach * fakeReach;
}
