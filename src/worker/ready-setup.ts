import { type ChanceModel, type ChanceState, compileChance, createChanceState } from '../engine/index.ts';
import { type ParseResult, type Playbook, parsePlaybook } from '../playbook/index.ts';
import { buildMatchup } from './build-matchup.ts';
import { castOf } from './cast.ts';
import type { Cast, TrialSetup } from './protocol.ts';

/** A setup made ready to be played, or why it cannot be. */
export type Ready =
  | {
      readonly kind: 'ready';
      readonly playbook: Playbook;
      readonly model: ChanceModel;
      readonly state: ChanceState;
      readonly cast: Cast;
    }
  | { readonly kind: 'refused'; readonly reason: string };

/** Matchups kept compiled: a thread that gets the batches of one play against all schemes in turn compiles each once. */
const keptSetups = 32;
const compiled = new Map<string, Ready>();
/** Documents kept read: what is asked before and after an edit, and beside it. */
const keptDocuments = 4;
const parsed = new Map<string, ParseResult>();

/** The setup, compiled once. What is remembered between requests changes no answer. */
export function readySetup(setup: TrialSetup): Ready {
  return remembered(compiled, keptSetups, JSON.stringify(setup), () => compile(setup));
}

function compile(setup: TrialSetup): Ready {
  const read = remembered(parsed, keptDocuments, setup.document, () => parsePlaybook(setup.document));
  if (read.value === undefined) return { kind: 'refused', reason: whyRefused(read) };
  const built = buildMatchup(read.value, setup);
  if (built.kind === 'refused') return built;
  const model = compileChance(built.matchup, setup.seed);
  return {
    kind: 'ready',
    playbook: read.value,
    model,
    state: createChanceState(model),
    cast: castOf(built.matchup, built.players),
  };
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
