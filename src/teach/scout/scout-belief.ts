import {
  believeSchemes,
  type MarkedFilm,
  movementIds,
  type SchemeBelief,
  signTableOf,
  suspectsOf,
  type Tick,
  type WalkedMovement,
} from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import { expectKind, type MeasureOptions, type TrialPool } from '../../worker/index.ts';
import { movementsOfPlay, type ScoutQuestion, schemesInQuestion, scoutSetup } from './scout-question.ts';

/** What was seen of a man-down unit. */
export interface ScoutSeen {
  /** Marked man-ups of it. */
  readonly films: readonly MarkedFilm[];
  readonly ticks: readonly Tick[];
  /** Standard deviation of a mark along each axis, yards; a yard when absent. */
  readonly error?: number;
}

/** What every movement of a set shows of every scheme: some seconds of work on all threads, and good for as long as set, level and schemes stay. */
export async function walkMovements(
  pool: TrialPool,
  playbook: Playbook,
  question: ScoutQuestion,
  options: MeasureOptions = {},
): Promise<readonly WalkedMovement[]> {
  const setup = scoutSetup(playbook, question);
  const known = movementsOfPlay(playbook, question).map(({ id }) => id);
  const schemes = question.schemes.map(({ weight: _, ...scheme }) => scheme);
  const requests = movementIds
    .filter((movement) => known.includes(movement))
    .map((movement) => ({ kind: 'walk', setup, schemes, movement }) as const);
  options.onPlan?.(requests.length);
  const answers = await pool.answer(requests, options);
  return answers.flatMap((answer) => {
    const { walked } = expectKind(answer, 'walk');
    return walked === null ? [] : [walked];
  });
}

/** Which scheme it is by marks and ticks, with why: asked of a thread. `walked` is needed for ticks alone. */
export async function scoutBelief(
  pool: TrialPool,
  playbook: Playbook,
  question: ScoutQuestion,
  { films, ticks, error }: ScoutSeen,
  walked: readonly WalkedMovement[] = [],
  options: MeasureOptions = {},
): Promise<SchemeBelief> {
  const setup = scoutSetup(playbook, question);
  const asked = {
    schemes: question.schemes,
    films,
    ...(error !== undefined && { error }),
    ...(ticks.length > 0 && { ticks: { walked, seen: ticks } }),
  };
  options.onPlan?.(1);
  const [answer] = await pool.answer([{ kind: 'belief', setup, asked }], options);
  return expectKind(answer!, 'belief').belief;
}

/** Which scheme it is by ticks alone, at once: nothing is simulated, so a page may ask it on every tap. */
export function beliefByTicks(
  playbook: Playbook,
  question: ScoutQuestion,
  walked: readonly WalkedMovement[],
  seen: readonly Tick[],
): SchemeBelief {
  const schemes = schemesInQuestion(playbook, question);
  const level = question.level ?? playbook.team.level;
  const table = signTableOf(walked, suspectsOf(schemes, level));
  return believeSchemes({ schemes, level, ticks: { table, seen } });
}
