import { cueVocabulary } from './cue-vocabulary.ts';
import type { DecisionTable } from './decision-table.ts';
import type { CarrierChance } from './gather-decisions.ts';
import { type Keeping, worthOf } from './learn-keeping.ts';

/** The table of some chances of a carrier, a ball that is still in hand being worth `keeping`. Each chance counts the same unless told otherwise. RangeError when there is none. */
export function buildDecisionTable(
  carrier: number,
  chances: readonly CarrierChance[],
  keeping: Keeping,
  weight_byChance: Float64Array = new Float64Array(chances.length).fill(1),
): DecisionTable {
  const looks = chances.flatMap((chance) => chance.looks);
  if (looks.length === 0) throw new RangeError('invalid chances: none (expected at least one)');
  const actions = looks[0].outcome_byAction.length;
  const first_byChance = new Int32Array(chances.length + 1);
  chances.forEach((chance, at) => {
    first_byChance[at + 1] = first_byChance[at] + chance.looks.length;
  });
  return {
    actions,
    cues: cueVocabulary(carrier).length,
    first_byChance,
    weight_byChance,
    luck_byChance: Int32Array.from(chances, ({ trial }) => trial),
    cues_byMoment: Int32Array.from(looks, ({ cues }) => cues),
    worth_byMomentAction: Float32Array.from(
      looks.flatMap((look) => look.outcome_byAction.map((outcome) => worthOf(outcome, keeping))),
    ),
    goOn_byChance: Float32Array.from(chances, ({ goOn }) => worthOf(goOn, keeping)),
  };
}
