import { cueSubject, whoLeft } from './cue-subject.ts';
import type { ChanceModel } from './model.ts';
import type { Options } from './options.ts';
import type { CompiledCue } from './program.ts';
import type { ChanceState } from './state.ts';

/** Time and room: nobody can hurry the shot more than this before it is gone. */
const freeRush = 0.5;
/** A man is open to the eye with a lane at least this good: a share of an easy pass's odds. */
const openLane = 0.75;

/** Whether a cue holds in what the carrier sees: by the places and ways of all men, and of a shot or a pass also by what it would be worth. */
export function cueHolds(
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  seen: Float64Array,
  cue: CompiledCue,
  options: Options,
): boolean {
  switch (cue.kind) {
    case 'iAmFree':
      return options.shotOdds > 0 && options.shotRush <= freeRush && cueSubject(model, seen, carrier, cue) >= 0;
    case 'open':
      return (
        options.completion_byMate[cue.who] >= openLane * model.passNorm && cueSubject(model, seen, carrier, cue) >= 0
      );
    case 'left':
      return whoLeft(model, seen, cue.who, state.ball.x, state.ball.y) >= 0;
    default:
      return cueSubject(model, seen, carrier, cue) >= 0;
  }
}
