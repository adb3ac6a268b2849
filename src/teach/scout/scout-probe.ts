import {
  type ProbeAdvice,
  signTableOf,
  suspectsOf,
  type WalkedMovement,
  worthOfMovements,
} from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';
import type { MeasuredPlay } from '../sheets/measure-plays.ts';
import { movementsOfPlay, type ScoutQuestion, schemesInQuestion } from './scout-question.ts';

/**
 * Which opening movement is worth running to find out what they play, and what to call after it. `shares` is how likely each scheme of the question is now; the calls
 * are plays that were measured against the same schemes. Nothing is simulated here.
 */
export function probeAdvice(
  playbook: Playbook,
  question: ScoutQuestion,
  walked: readonly WalkedMovement[],
  shares: readonly number[],
  calls: readonly MeasuredPlay[],
): ProbeAdvice {
  const suspects = suspectsOf(schemesInQuestion(playbook, question), question.level ?? playbook.team.level);
  const goals_byCallScheme = calls.map(({ play, results }) =>
    question.schemes.map(({ id }) => {
      const found = results.find(({ scheme }) => scheme === id);
      if (found === undefined) throw new RangeError(`invalid calls: ${play} was not measured against ${id}`);
      return found.goalsPerChance.mean;
    }),
  );
  return worthOfMovements(signTableOf(walked, suspects), movementsOfPlay(playbook, question), suspects, {
    share_byScheme: shares,
    goals_byCallScheme,
  });
}
