import type { ChanceModel } from '../chance/model.ts';
import { advanceTrial } from '../chance/run.ts';
import { type ChanceState, phase } from '../chance/state.ts';
import { beginWatched, lookRound, type SeenLook } from './gather-decisions.ts';

/** One look of a man with the ball in one trial: where a question can be asked. Plain data. */
export interface CarrierMoment extends Omit<SeenLook, 'numbers'> {
  readonly trial: number;
  /** Offense index of the man with the ball. */
  readonly carrier: number;
  /** The mate to whom the play has him throw as soon as he can, offense index; -1 for nobody. */
  readonly asked: number;
}

/** Of one possession so many looks are kept, spread over it: neighbours are a fifth of a second apart and ask the same. */
const keptLooks = 3;
/** A run of the script that has not ended by then is followed no further. Seconds after its start. */
const longestScript = 30;

/**
 * The looks of the men with the ball in a trial in which the play runs once as it is written, nobody taking an opening or a read: of each possession the first, the
 * middle and the last. `carriers` are the men who are asked about, offense indices.
 */
export function momentsOfTrial(
  model: ChanceModel,
  state: ChanceState,
  trial: number,
  carriers: readonly number[],
): readonly CarrierMoment[] {
  const possessions = new Map<number, CarrierMoment[]>();
  beginWatched(model, state, trial);
  state.recorder = {
    event: () => {},
    frame: () => {},
    look: (carrier, seen) => {
      if (state.unit.phase !== phase.script || !carriers.includes(carrier)) return;
      const { numbers: _, ...look } = lookRound(model, state, carrier, seen);
      const looks = possessions.get(state.ball.heldSince) ?? [];
      looks.push({ ...look, trial, carrier, asked: state.unit.passTo[carrier] });
      possessions.set(state.ball.heldSince, looks);
    },
  };
  while (runsOnce(state)) advanceTrial(model, state);
  state.recorder = null;
  return [...possessions.values()].flatMap(spread);
}

function runsOnce({ end, unit, scriptSince, time }: ChanceState): boolean {
  if (end !== null) return false;
  const hasBegun = scriptSince >= 0;
  return !hasBegun || (unit.phase === phase.script && time - scriptSince < longestScript);
}

function spread(looks: readonly CarrierMoment[]): readonly CarrierMoment[] {
  if (looks.length <= keptLooks) return looks;
  const last = looks.length - 1;
  return [looks[0]!, looks[last >> 1]!, looks[last]!];
}
