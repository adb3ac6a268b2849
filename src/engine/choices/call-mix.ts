import { solveMatrixGame, worstCase } from './matrix-game.ts';

/** What a caller knows before he calls. */
export interface CallChoice {
  /** Goals a chance of each call against each scheme. */
  readonly goals_byCallScheme: readonly (readonly number[])[];
  /** How likely each scheme is; counted by their shares of the whole, which is more than 0. */
  readonly weight_byScheme: readonly number[];
  /**
   * How far that is trusted, 0 to 1: with 1 they play by it whatever is called; with 0 they know how often each call comes and pick the scheme that hurts
   * most.
   */
  readonly trust: number;
  /** Most calls that may be in the mix: as many as the unit can run. At least 1. */
  readonly mostCalls: number;
}

/** How often to call what, so that it cannot be guessed. */
export interface CallMix {
  /** 0 to 1 and 1 in all; 0 for a call that is not in the mix. */
  readonly share_byCall: readonly number[];
  /** Goals a chance if they play as is believed. */
  readonly asBelieved: number;
  /** The least that it brings, goals a chance, whatever they choose. */
  readonly atWorst: number;
}

/**
 * The mix of calls that is worth most when the belief about the other side holds with odds `trust`, and else they answer the mix as well as they can: each
 * payoff becomes `trust` times what the call brings by the belief and the rest of what it brings there, and that game is solved. Johanson,
 * Zinkevich and Bowling 2007, Computing Robust Counter-Strategies (NIPS 20), for matrix games; from memory. The calls of a bounded mix are found by trying all sets
 * of so many, or, where those are too many, by exchanging one for another as long as it helps. RangeError for a choice that is none.
 */
export function mixCalls(choice: CallChoice): CallMix {
  const { goals_byCallScheme: goals, weight_byScheme, trust, mostCalls } = choice;
  const belief = beliefOf(weight_byScheme, goals[0]?.length ?? 0);
  if (!(trust >= 0 && trust <= 1)) throw new RangeError(`invalid trust: ${trust} (expected 0 to 1)`);
  if (!(Number.isInteger(mostCalls) && mostCalls >= 1)) {
    throw new RangeError(`invalid number of calls: ${mostCalls} (expected a whole number, 1 or more)`);
  }
  const believed = goals.map((row) => row.reduce((sum, one, scheme) => sum + one * belief[scheme]!, 0));
  const payoffs = goals.map((row, call) => row.map((one) => trust * believed[call]! + (1 - trust) * one));
  const calls = bestCalls(payoffs, mostCalls);
  const { share_byRow } = solveMatrixGame(calls.map((call) => payoffs[call]!));
  const share_byCall = goals.map((_, call) => share_byRow[calls.indexOf(call)] ?? 0);
  return {
    share_byCall,
    asBelieved: share_byCall.reduce((sum, share, call) => sum + share * believed[call]!, 0),
    atWorst: worstCase(goals, share_byCall),
  };
}

/** The call that a draw from 0 (included) to 1 (excluded) falls on. */
export function drawnCall({ share_byCall }: CallMix, draw: number): number {
  let left = draw;
  for (const [call, share] of share_byCall.entries()) {
    left -= share;
    if (left < 0) return call;
  }
  // Rounding may leave a hair: it is the last one's that is called at all.
  return share_byCall.reduce((last, share, call) => (share > 0 ? call : last), 0);
}

/** More sets than this are not all tried. */
const mostSets = 4000;

function bestCalls(payoffs: readonly (readonly number[])[], most: number): readonly number[] {
  const all = payoffs.map((_, call) => call);
  if (most >= all.length) return all;
  return setsOf(all.length, most) <= mostSets ? bestOfAll(payoffs, all, most) : byExchange(payoffs, all, most);
}

function bestOfAll(payoffs: readonly (readonly number[])[], all: readonly number[], most: number): readonly number[] {
  let best: readonly number[] = all.slice(0, most);
  let value = gameValue(payoffs, best);
  for (const calls of subsets(all, most)) {
    const here = gameValue(payoffs, calls);
    if (here > value) [best, value] = [calls, here];
  }
  return best;
}

/** Begins with the calls of the whole game's mix that come most often; then the best exchange of one, as long as there is one that helps. */
function byExchange(payoffs: readonly (readonly number[])[], all: readonly number[], most: number): readonly number[] {
  const { share_byRow } = solveMatrixGame(payoffs);
  let calls: readonly number[] = [...all].sort((one, other) => share_byRow[other]! - share_byRow[one]!).slice(0, most);
  let value = gameValue(payoffs, calls);
  for (;;) {
    const tried = calls.flatMap((out) =>
      all
        .filter((call) => !calls.includes(call))
        .map((call) => calls.map((one) => (one === out ? call : one)))
        .map((next) => ({ next, here: gameValue(payoffs, next) })),
    );
    const [first] = tried.sort((one, other) => other.here - one.here);
    if (first === undefined || first.here <= value + smallGain) return calls;
    [calls, value] = [first.next, first.here];
  }
}

/** Goals a chance that are not worth another round. */
const smallGain = 1e-9;

function gameValue(payoffs: readonly (readonly number[])[], calls: readonly number[]): number {
  return solveMatrixGame(calls.map((call) => payoffs[call]!)).value;
}

/** How many sets of `size` there are among so many, at most 1e9. */
function setsOf(count: number, size: number): number {
  let sets = 1;
  for (let at = 0; at < size; at++) sets = Math.min(1e9, (sets * (count - at)) / (at + 1));
  return sets;
}

function* subsets(from: readonly number[], size: number): Generator<readonly number[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let at = 0; at <= from.length - size; at++) {
    for (const rest of subsets(from.slice(at + 1), size - 1)) yield [from[at]!, ...rest];
  }
}

function beliefOf(weights: readonly number[], schemes: number): readonly number[] {
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  if (weights.length !== schemes || !weights.every((weight) => weight >= 0) || !(all > 0 && Number.isFinite(all))) {
    throw new RangeError(
      `invalid weights of schemes: ${weights.join(' ')} (expected ${schemes} of 0 or more, not all 0)`,
    );
  }
  return weights.map((weight) => weight / all);
}
