import type { LookNumbers } from './best-decisions.ts';
import { cueVocabulary } from './cue-vocabulary.ts';
import type { CarrierChance, CarrierLook } from './gather-decisions.ts';
import { lookNumberCount } from './look-numbers.ts';

/**
 * The numbers of all looks of some chances: what the carrier makes of each in odds and yards, then 1 for each cue of his vocabulary that
 * holds. All of them bear on the worth of each of so many `actions` and of waiting: fits by fewer were worth less in other chances
 * (docs/models/reads.md).
 */
export function numbersOf(carrier: number, chances: readonly CarrierChance[], actions: number): LookNumbers {
  const looks = chances.flatMap((chance) => chance.looks);
  const cues = cueVocabulary(carrier).length;
  const count = lookNumberCount + cues;
  const everything = Array.from({ length: count }, (_, column) => column);
  return {
    count,
    numbers_byMoment: Float64Array.from(looks.flatMap((look) => numbersOfLook(look, cues))),
    rank_byMoment: Int32Array.from(chances.flatMap((chance) => chance.looks.map((_, rank) => rank))),
    columns_byAction: Array.from({ length: actions }, () => everything),
    columnsOfWaiting: everything,
  };
}

function numbersOfLook({ numbers, cues: held }: CarrierLook, cues: number): readonly number[] {
  return [...numbers, ...Array.from({ length: cues }, (_, cue) => (held >> cue) & 1)];
}
