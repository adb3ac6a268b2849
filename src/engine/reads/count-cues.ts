import { cueHolds } from '../chance/cues.ts';
import type { ChanceModel } from '../chance/model.ts';
import { foresee, likelyShare } from '../chance/perceive.ts';
import type { CompiledCue } from '../chance/program.ts';
import { advanceTrial, beginTrial } from '../chance/run.ts';
import { ballMode, type ChanceState, phase } from '../chance/state.ts';
import { windUpShare } from '../chance/timing.ts';
import { weighInto } from '../chance/weigh.ts';
import { cueVocabulary } from './cue-vocabulary.ts';

/** How often one carrier looked round while the play ran, and at how many of these looks each cue of his vocabulary held. */
export interface CueCount {
  readonly looks: number;
  readonly cues: readonly { readonly cue: CompiledCue; readonly held: number }[];
}

interface Counting {
  looks: number;
  readonly cues: { readonly cue: CompiledCue; held: number }[];
}

const everyMate = 0b111111;

/**
 * Counts what each man with the ball can see while the play runs as it is written: nobody takes an opening or a read. One count per man, in
 * the order of the play's spots; trials `from` (included) to `to` (excluded).
 */
export function countCues(model: ChanceModel, state: ChanceState, from: number, to: number): readonly CueCount[] {
  const counts = model.program.spotIds.map(
    (_, carrier): Counting => ({
      looks: 0,
      cues: cueVocabulary(carrier).map((cue) => ({ cue, held: 0 })),
    }),
  );
  for (let trial = from; trial < to; trial++) {
    beginTrial(model, state, trial);
    state.watching = true;
    for (let next = 0; state.end === null; advanceTrial(model, state)) {
      if (!canLook(state) || state.time < next) continue;
      next = state.time + model.parameters.decideEvery;
      const carrier = state.ball.holder;
      countLook(model, state, carrier, counts[carrier]);
    }
  }
  return counts;
}

function canLook({ ball, unit, time }: ChanceState): boolean {
  if (unit.phase !== phase.script || ball.mode !== ballMode.held) return false;
  return ball.holder >= 0 && ball.holder < 6 && time >= ball.readyAt;
}

function countLook(model: ChanceModel, state: ChanceState, carrier: number, count: Counting): void {
  const { options, foreseen } = model.scratch;
  const windUp = model.athletes[carrier].passRelease * windUpShare;
  const seen = foresee(model, state, carrier, windUp, likelyShare, foreseen);
  weighInto(options, model, state, carrier, seen, everyMate, 0);
  count.looks += 1;
  for (const each of count.cues) if (cueHolds(model, state, carrier, seen, each.cue, options)) each.held += 1;
}
