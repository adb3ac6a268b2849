import {
  believeSchemes,
  type ChanceModel,
  defaultFilmReading,
  defaultWalkChoice,
  type MovementId,
  movementsOf,
  type SchemeInQuestion,
  signTableOf,
  suspectsOf,
  walkMovement,
} from '../engine/index.ts';
import { type Playbook, toEnginePlay, toEngineScheme } from '../playbook/index.ts';
import type { BeliefAsked, TrialSetup, WalkedScheme, WorkerAnswer } from './protocol.ts';

/** Which scheme it is. A scheme that the playbook does not know is refused. */
export function answerBelief(
  playbook: Playbook,
  model: ChanceModel,
  setup: TrialSetup,
  { schemes, manUps, walked, error }: BeliefAsked,
): WorkerAnswer {
  const questions = questionsOf(playbook, setup, schemes);
  if (typeof questions === 'string') return { kind: 'refused', reason: questions };
  const level = setup.level ?? playbook.team.level;
  const reading = {
    ...defaultFilmReading,
    sense: model.sense,
    ...(error !== undefined && { spread: { ...defaultFilmReading.spread, error } }),
  };
  const signs = walked && signTableOf(walked, suspectsOf(questions, level));
  return {
    kind: 'belief',
    belief: believeSchemes({ schemes: questions, level, manUps, reading, ...(signs && { signs }) }),
  };
}

/** What a movement shows of each scheme. */
export function answerWalk(
  playbook: Playbook,
  model: ChanceModel,
  setup: TrialSetup,
  asked: { readonly schemes: readonly WalkedScheme[]; readonly movement: MovementId },
): WorkerAnswer {
  const questions = questionsOf(
    playbook,
    setup,
    asked.schemes.map((one) => ({ ...one, weight: 1 })),
  );
  if (typeof questions === 'string') return { kind: 'refused', reason: questions };
  const level = setup.level ?? playbook.team.level;
  const { spots, start } = model.matchup.play;
  const movement = movementsOf(
    spots.map(({ at }) => at),
    spots.findIndex(({ id }) => id === start.ball),
    level,
  ).find(({ id }) => id === asked.movement);
  if (movement === undefined) return { kind: 'walk', walked: null };
  const choice = { ...defaultWalkChoice, level };
  return { kind: 'walk', walked: walkMovement(movement, suspectsOf(questions, level), choice) };
}

/** The schemes as the engine takes them; a sentence when one is not known. */
function questionsOf(
  playbook: Playbook,
  { play }: TrialSetup,
  schemes: BeliefAsked['schemes'],
): readonly SchemeInQuestion[] | string {
  const written = toEnginePlay(playbook, play);
  const found = schemes.map(({ id, ...rest }) => ({ ...rest, id, scheme: toEngineScheme(playbook, id, written) }));
  const unknown = found.find(({ scheme }) => scheme === undefined);
  if (unknown !== undefined) return `unknown scheme: ${unknown.id}`;
  return found.map(({ id: _, scheme, ...rest }) => ({ scheme: scheme!, ...rest }));
}
