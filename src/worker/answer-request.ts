import {
  type ChanceModel,
  type ChanceState,
  compileChance,
  createChanceState,
  forceLooks,
  runTrials,
  watchPlay,
} from '../engine/index.ts';
import { type Playbook, parsePlaybook } from '../playbook/index.ts';
import { buildMatchup } from './build-matchup.ts';
import type { TrialSetup, WorkerAnswer, WorkerRequest } from './protocol.ts';

/** Answers one request. Pure but for what it remembers between requests, which changes no answer. */
export function answerRequest(request: WorkerRequest): WorkerAnswer {
  const ready = readySetup(request.setup);
  if (ready.kind === 'refused') return ready;
  const { model, state } = ready;
  switch (request.kind) {
    case 'tally':
      return { kind: 'tally', tally: runTrials(model, state, request.range.from, request.range.to) };
    case 'watch':
      return { kind: 'watch', watched: watchPlay(model, state, request.range.from, request.range.to) };
    case 'force':
      return { kind: 'force', goals: forceLooks(model, state, request.trials) };
    default:
      throw new TypeError(`unknown request: ${JSON.stringify(request satisfies never)}`);
  }
}

type Ready =
  | { readonly kind: 'ready'; readonly model: ChanceModel; readonly state: ChanceState }
  | { readonly kind: 'refused'; readonly reason: string };

/** Matchups kept compiled: a thread that gets the batches of one play against all schemes in turn compiles each once. */
const keptSetups = 16;
const compiled = new Map<string, Ready>();
const parsed = new Map<string, Playbook | undefined>();

function readySetup(setup: TrialSetup): Ready {
  return remembered(compiled, keptSetups, JSON.stringify(setup), () => compile(setup));
}

function compile(setup: TrialSetup): Ready {
  const playbook = remembered(parsed, 1, setup.document, () => parsePlaybook(setup.document).value);
  if (playbook === undefined) return { kind: 'refused', reason: 'the playbook has errors' };
  const built = buildMatchup(playbook, setup);
  if (built.kind === 'refused') return built;
  const model = compileChance(built.matchup, setup.seed);
  return { kind: 'ready', model, state: createChanceState(model) };
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
