import {
  compileChance,
  createChanceState,
  furthestScript,
  playForced,
  recordTrace,
  runTrials,
  shotHeat,
  taughtPlay,
  traceScript,
  watchPlay,
} from '../engine/index.ts';
import type { TrialsRequest, WorkerAnswer } from './protocol.ts';
import { readySetup } from './ready-setup.ts';

/** Answers what is asked of trials as they are played: what everything that moves on the screen needs. */
export function answerTrials(request: TrialsRequest): WorkerAnswer {
  const ready = readySetup(request.setup);
  if (ready.kind === 'refused') return ready;
  const { model, state, cast } = ready;
  switch (request.kind) {
    case 'tally':
      return { kind: 'tally', tally: runTrials(model, state, request.range.from, request.range.to) };
    case 'taught': {
      const { carrier, reads, range, setup } = request;
      const play = taughtPlay(model.matchup.play, carrier, reads);
      const taught = compileChance({ ...model.matchup, play }, setup.seed);
      return { kind: 'tally', tally: runTrials(taught, createChanceState(taught), range.from, range.to) };
    }
    case 'watch':
      return { kind: 'watch', watched: watchPlay(model, state, request.range.from, request.range.to) };
    case 'force':
      return { kind: 'force', forced: playForced(model, state, request.trials) };
    case 'trace':
      if (request.of === 'script') {
        return { kind: 'trace', of: 'script', cast, script: traceScript(model, state, request.trial) ?? null };
      }
      return { kind: 'trace', of: 'chance', cast, trace: recordTrace(model, request.trial, request.forced) };
    case 'furthest':
      return { kind: 'furthest', cast, found: furthestScript(model, request.watched) ?? null };
    case 'heat':
      return { kind: 'heat', heat: shotHeat(model, request.shooter) };
    default:
      throw new TypeError(`unknown request: ${JSON.stringify(request satisfies never)}`);
  }
}
