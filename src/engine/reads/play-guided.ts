import type { ChanceModel } from '../chance/model.ts';
import { compileProgram, type Script } from '../chance/program.ts';
import { advanceTrial } from '../chance/run.ts';
import type { ChanceState, Recorder } from '../chance/state.ts';
import type { Read } from '../offense/play.ts';
import { beginWatched, bringTo, hasBall, type Outcome, playTo } from './gather-decisions.ts';

/**
 * By what a carrier goes while he has the ball from the play: by the reads of the play and what he himself sees open (`eye`), by the reads
 * of the play alone, or by others.
 */
export type Guidance = 'eye' | 'taughtReads' | { readonly reads: readonly Read[] };

/**
 * What trials come to in which the play brings this man the ball and he goes by one guidance while he has it, in the full simulation,
 * from the moment that he can act to `horizon` seconds after it. Of a trial in which it does not come to him nothing comes. Everybody else,
 * and he himself once the ball has left him, plays as ever.
 */
export function playGuided(
  model: ChanceModel,
  state: ChanceState,
  carrier: number,
  guidance: Guidance,
  { trials, horizon }: { readonly trials: readonly number[]; readonly horizon: number },
): readonly Outcome[] {
  const guided = typeof guidance === 'object' ? guidedScript(model, guidance.reads) : null;
  return trials.map((trial) => {
    beginWatched(model, state, trial);
    if (!bringTo(model, state, carrier)) return { goals: 0, left: null };
    const { step, time } = state;
    beginWatched(model, state, trial);
    // Up to the step before his first look: in that one he may already have thrown as the play asks.
    while (state.step < step - 1) advanceTrial(model, state);
    const before = state.counts.goalOddsSum;
    const { script } = state.unit;
    state.watching = false;
    state.byReadsAlone = guidance !== 'eye';
    if (guided !== null) state.unit.script = guided;
    state.recorder = listenFor(carrier, () => leaveGuidance(state, guided, script));
    while (state.end === null && (state.step < step || hasBall(state, carrier))) advanceTrial(model, state);
    state.recorder = null;
    leaveGuidance(state, guided, script);
    const { left } = playTo(model, state, time + horizon);
    return { goals: state.counts.goalOddsSum - before, left };
  });
}

/**
 * Tells of the first read that he acts on. A throw takes the ball from him; after anything else he plays by eye, so that what is shown or waited
 * for is used: a card says one thing to do, not what follows.
 */
function listenFor(carrier: number, tell: () => void): Recorder {
  return {
    event: (event) => {
      if (event.kind === 'read' && event.who === carrier) tell();
    },
    frame: () => {},
  };
}

/** From here on he goes by the play's own reads and by eye. */
function leaveGuidance(state: ChanceState, guided: Script | null, script: Script): void {
  state.byReadsAlone = false;
  if (state.unit.script === guided) state.unit.script = script;
}

/** The script with these reads in the place of its own. */
function guidedScript({ program, matchup }: ChanceModel, reads: readonly Read[]): Script {
  const { script } = compileProgram({ ...matchup.play, reads });
  return { ...program.script, reads: script.reads, readMates_byCarrier: script.readMates_byCarrier };
}
