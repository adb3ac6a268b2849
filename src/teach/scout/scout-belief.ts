import {
  believeSchemes,
  movementIds,
  type SchemeBelief,
  type SeenManUp,
  signTableOf,
  suspectsOf,
  type Tick,
  type WalkedMovement,
} from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import { expectKind, type MeasureOptions, type TrialPool } from '../../worker/index.ts';
import { withNamed, withoutNamed } from './named-man-ups.ts';
import { movementsOfPlay, type ScoutQuestion, schemesInQuestion, scoutSetup } from './scout-question.ts';

/** What was seen of a man-down unit. */
export interface ScoutSeen {
  /** Man-ups of it in which something was marked or ticked. */
  readonly manUps: readonly SeenManUp[];
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

/** Which scheme it is by marks and ticks, and by the man-ups that were counted by their names, with why: asked of a thread. `walked` is needed for ticks alone. */
export async function scoutBelief(
  pool: TrialPool,
  playbook: Playbook,
  question: ScoutQuestion,
  { manUps, error }: ScoutSeen,
  walked: readonly WalkedMovement[] = [],
  options: MeasureOptions = {},
): Promise<SchemeBelief> {
  const setup = scoutSetup(playbook, question);
  const { counted = {} } = question;
  const asked = {
    schemes: withoutNamed(question.schemes, counted),
    manUps,
    ...(error !== undefined && { error }),
    ...(walked.length > 0 && { walked }),
  };
  options.onPlan?.(1);
  const [answer] = await pool.answer([{ kind: 'belief', setup, asked }], options);
  return withNamed(expectKind(answer!, 'belief').belief, question.schemes, counted);
}

/** Which scheme one man-up looks like by its ticks alone, in the order of the question's: at once, nothing is simulated, so a page may ask it on every tap. */
export function beliefByTicks(
  playbook: Playbook,
  question: ScoutQuestion,
  walked: readonly WalkedMovement[],
  seen: readonly Tick[],
): readonly number[] {
  const schemes = schemesInQuestion(playbook, question);
  const level = question.level ?? playbook.team.level;
  const signs = signTableOf(walked, suspectsOf(schemes, level));
  return believeSchemes({ schemes, level, signs, manUps: [{ ticks: seen }] }).manUps[0]!.share_byScheme;
}
