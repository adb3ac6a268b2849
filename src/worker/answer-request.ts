import {
  type ChanceModel,
  type ChanceState,
  carrierActions,
  compileChance,
  createChanceState,
  furthestScript,
  gatherDecisions,
  gatherRuns,
  momentsOfTrial,
  playForced,
  playGuided,
  recordTrace,
  runTrials,
  shotHeat,
  studyCarrier,
  studyRunner,
  taughtPlay,
  traceMoment,
  traceScript,
  valueMoment,
  watchPlay,
} from '../engine/index.ts';
import { type ParseResult, parsePlaybook } from '../playbook/index.ts';
import { buildMatchup } from './build-matchup.ts';
import { castOf } from './cast.ts';
import type { Cast, TrialSetup, WorkerAnswer, WorkerRequest } from './protocol.ts';

/** Answers one request. Pure but for what it remembers between requests, which changes no answer. */
export function answerRequest(request: WorkerRequest): WorkerAnswer {
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
    case 'decisions': {
      const memory = { state, spare: createChanceState(model) };
      const { carrier, range, horizon } = request;
      const chances = gatherDecisions(model, memory, carrier, carrierActions(model.matchup.play, carrier), {
        ...range,
        horizon,
      });
      return { kind: 'decisions', chances };
    }
    case 'study':
      return { kind: 'study', study: studyCarrier(model.matchup.play, request.carrier, request, request.limits) };
    case 'guided':
      return { kind: 'guided', outcomes: playGuided(model, state, request.carrier, request.guidance, request) };
    case 'runs': {
      const memory = { state, spare: createChanceState(model) };
      const { order, range, horizon } = request;
      return { kind: 'runs', chances: gatherRuns(model, memory, order, { ...range, horizon }) };
    }
    case 'runStudy':
      return { kind: 'runStudy', study: studyRunner(request.order, request.learn, request.held, request.limits) };
    case 'moments': {
      const { carriers, range } = request;
      const trials = Array.from({ length: range.to - range.from }, (_, at) => range.from + at);
      const moments = trials.flatMap((trial) => momentsOfTrial(model, state, trial, carriers));
      return { kind: 'moments', cast, moments };
    }
    case 'momentValues': {
      const memory = { state, spare: createChanceState(model) };
      const values = request.moments.map((moment) => valueMoment(model, memory, moment, request.futures));
      return { kind: 'momentValues', values };
    }
    case 'momentTraces': {
      const memory = { state, spare: createChanceState(model) };
      const traces = traceMoment(model, memory, request.moment, request.shown, request);
      return { kind: 'momentTraces', traces };
    }
    case 'heat':
      return { kind: 'heat', heat: shotHeat(model, request.shooter) };
    default:
      throw new TypeError(`unknown request: ${JSON.stringify(request satisfies never)}`);
  }
}

type Ready =
  | { readonly kind: 'ready'; readonly model: ChanceModel; readonly state: ChanceState; readonly cast: Cast }
  | { readonly kind: 'refused'; readonly reason: string };

/** Matchups kept compiled: a thread that gets the batches of one play against all schemes in turn compiles each once. */
const keptSetups = 32;
const compiled = new Map<string, Ready>();
/** Documents kept read: what is asked before and after an edit, and beside it. */
const keptDocuments = 4;
const parsed = new Map<string, ParseResult>();

function readySetup(setup: TrialSetup): Ready {
  return remembered(compiled, keptSetups, JSON.stringify(setup), () => compile(setup));
}

function compile(setup: TrialSetup): Ready {
  const read = remembered(parsed, keptDocuments, setup.document, () => parsePlaybook(setup.document));
  if (read.value === undefined) return { kind: 'refused', reason: whyRefused(read) };
  const built = buildMatchup(read.value, setup);
  if (built.kind === 'refused') return built;
  const model = compileChance(built.matchup, setup.seed);
  return { kind: 'ready', model, state: createChanceState(model), cast: castOf(built.matchup, built.players) };
}

function whyRefused({ diagnostics }: ParseResult): string {
  const first = diagnostics.find(({ severity }) => severity === 'error');
  return first === undefined ? 'the playbook has errors' : `the playbook has errors: ${first.message}`;
}

// Oldest first out: a Map keeps the order in which keys came.
function remembered<T>(memory: Map<string, T>, most: number, key: string, make: () => T): T {
  const known = memory.get(key);
  if (known !== undefined) return known;
  const made = make();
  if (memory.size >= most) memory.delete(memory.keys().next().value ?? '');
  memory.set(key, made);
  return made;
}
