import { engineVersion, inputHash } from '../../engine/index.ts';
import {
  adviseCall,
  type Belief,
  type CallAdvice,
  type CallsAsked,
  type MeasuredCalls,
  measureCalls,
  usualCalls,
  usualCallTrials,
} from '../../teach/index.ts';
import { createTrialPool, defaultThreads } from '../../worker/node.ts';
import { callText } from '../call-text.ts';
import { chosenFoes, chosenPlays, type Foes, weighedFoes, weightOf } from '../choose-matchups.ts';
import { type AddCommand, addConditions, examples } from '../command-line.ts';
import { type Conditions, type RawConditions, readConditions, shown, wholeNumber } from '../conditions.ts';
import { badUse, unknownName } from '../failure.ts';
import type { Io } from '../io.ts';
import { levelNote } from '../level-note.ts';
import { type OpenPlaybook, openPlaybook } from '../open-playbook.ts';
import { startProgress } from '../progress.ts';

interface RawCall extends RawConditions {
  readonly opponent?: string;
  readonly belief?: string;
  readonly play?: string;
  readonly learnt?: string;
  readonly trust: string;
  readonly json?: true;
}

/** `sliderule call FILE`: what to call against an opponent, and how often, so that it cannot be guessed. */
export const addCall: AddCommand = (program, io) => {
  const command = program
    .command('call')
    .description('what to call against an opponent: the worth of each call, and a mix that cannot be guessed')
    .argument('<file>', 'the playbook, a JSON document')
    .option('--opponent <id>', 'the opponent, with his schemes and how well he plays them')
    .option('--belief <schemes>', 'what they are believed to play, with how likely each is: box-zone:3,jump:1')
    .option('--play <ids>', 'the plays that can be called, with commas between them (default: all)')
    .option('--learnt <number>', 'calls that the unit can run: the most in the mix (default: by the level)')
    .option('--trust <number>', 'how far the belief is trusted, 0 to 1', '0.7');
  addConditions(command)
    .option('--trials <number>', `man-ups for each call and scheme (default: ${usualCallTrials}, goals to about 0.03)`)
    .option('--threads <number>', 'worker threads (default: one a core)')
    .option('--json', 'print all of it as JSON')
    .addHelpText(
      'after',
      examples(io, [
        'sliderule call playbook.json --opponent copper-falls',
        'sliderule call playbook.json --belief box-zone:3,jump:1 --learnt 2',
        'sliderule call playbook.json --trust 0.2 --json',
      ]),
    )
    .action((file: string, raw: RawCall) => runCall(io, file, raw));
};

async function runCall(io: Io, file: string, raw: RawCall): Promise<void> {
  const conditions = readConditions(raw);
  const trust = readTrust(raw.trust);
  const opened = await openPlaybook(file, io);
  const { playbook } = opened;
  const learnt =
    raw.learnt === undefined
      ? usualCalls(conditions.level ?? playbook.team.level)
      : wholeNumber('--learnt', raw.learnt, 1, 50, 'calls');
  const foes = foesOf(opened, raw);
  const plays = chosenPlays(playbook, raw.play);
  const belief = beliefIn(foes);
  io.err(levelNote(playbook, conditions.level));
  const asked: CallsAsked = {
    calls: plays.map((play) => ({ play, fromSide: conditions.side })),
    schemes: foes.schemes,
    ...(foes.opponent && { opponent: foes.opponent.id }),
    trials: conditions.trials ?? usualCallTrials,
    seed: conditions.seed,
    penalty: conditions.penalty,
    level: conditions.level,
  };
  const measured = await measure(io, opened, asked, conditions);
  const advice = adviseCall(asked.calls, measured.calls, belief, { learnt, trust });
  // Every call was tried against every scheme, so that there is always an answer.
  if (advice.kind !== 'measured') throw new TypeError('no call was measured');
  if (raw.json === true) {
    io.out(`${JSON.stringify(jsonOf(opened, asked, { belief, learnt, trust }, measured, advice), null, 2)}\n`);
    return;
  }
  const against = foes.opponent?.name ?? 'what is believed';
  io.out(`${callText({ playbook, against, belief, measured, advice, learnt, trust })}\n`);
}

function readTrust(raw: string): number {
  const trust = /^\d*\.?\d+$/.test(raw) ? Number(raw) : Number.NaN;
  if (!(trust >= 0 && trust <= 1)) throw badUse(`invalid --trust: ${shown(raw)} (expected a number from 0 to 1).`);
  return trust;
}

/** Whom it is against: the opponent, by his own schemes or by those that are believed; or what is believed of anybody. */
function foesOf({ playbook }: OpenPlaybook, { opponent: id, belief }: RawCall): Foes {
  const known = (playbook.opponents ?? []).map((one) => one.id);
  if (id !== undefined && !known.includes(id)) throw unknownName('opponent after --opponent', id, known, undefined);
  const opponent = playbook.opponents?.find((one) => one.id === id);
  if (belief === undefined) {
    if (id === undefined)
      throw badUse('missing --opponent: name one, or say what is believed after --belief, such as box-zone:3,jump:1.');
    return chosenFoes(playbook, id);
  }
  if (known.includes(belief) || belief === 'all')
    throw badUse(`invalid --belief: ${shown(belief)} (expected schemes with weights, such as box-zone:3,jump:1).`);
  const foes = weighedFoes(playbook, belief, '--belief');
  return {
    ...foes,
    weights: Object.fromEntries(foes.schemes.map((scheme) => [scheme, weightOf(foes, scheme)])),
    ...(opponent && { opponent }),
  };
}

function beliefIn(foes: Foes): Belief {
  const weights = foes.schemes.map((scheme) => weightOf(foes, scheme));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return Object.fromEntries(foes.schemes.map((scheme, at) => [scheme, weights[at]! / all]));
}

async function measure(
  io: Io,
  { playbook }: OpenPlaybook,
  asked: CallsAsked,
  { threads }: Conditions,
): Promise<MeasuredCalls> {
  const pool = createTrialPool({ threads: threads ?? defaultThreads(), worker: io.worker });
  const progress = startProgress(io, 'Simulating');
  try {
    return await measureCalls(pool, playbook, asked, {
      signal: io.signal,
      onPlan: progress.plan,
      onAnswer: progress.step,
    });
  } finally {
    progress.stop();
    await pool.close();
  }
}

function jsonOf(
  { playbook }: OpenPlaybook,
  asked: CallsAsked,
  by: { readonly belief: Belief; readonly learnt: number; readonly trust: number },
  measured: MeasuredCalls,
  { calls, asBelieved, atWorst }: Extract<CallAdvice, { kind: 'measured' }>,
): object {
  return {
    engine: engineVersion,
    seed: asked.seed,
    inputHash: inputHash({ playbook, ...asked }),
    opponent: measured.opponent,
    penalty: measured.penalty,
    trials: measured.trials,
    ...by,
    calls: calls.map((call) => ({
      ...call,
      goals_byScheme: measured.calls.find((one) => one.play === call.play && one.fromSide === call.fromSide)
        ?.goals_byScheme,
    })),
    asBelieved,
    atWorst,
  };
}
