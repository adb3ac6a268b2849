import type { LookNumbers } from './best-decisions.ts';
import type { CarrierAction } from './carrier-actions.ts';
import type { CarrierChance } from './gather-decisions.ts';
import { lookNumberCount, mateCount, ownCount, ownNumber } from './look-numbers.ts';

/** The numbers of all looks of some chances, and which bear on the worth of what. */
export function numbersOf(
  carrier: number,
  chances: readonly CarrierChance[],
  actions: readonly CarrierAction[],
): LookNumbers {
  const looks = chances.flatMap((chance) => chance.looks);
  return {
    count: lookNumberCount,
    numbers_byMoment: Float64Array.from(looks.flatMap(({ numbers }) => [...numbers])),
    rank_byMoment: Int32Array.from(chances.flatMap((chance) => chance.looks.map((_, rank) => rank))),
    columns_byAction: actions.map((action) => columnsOf(action, carrier)),
    columnsOfWaiting: [
      ownNumber.one,
      ownNumber.shotOdds,
      ownNumber.room,
      ...[0, 1, 2, 3, 4].map((at) => mateAt(at) + 2),
    ],
  };
}

/** A pass is judged by what is known of it, everything else by the carrier's own state: fewer numbers are learnt better. */
function columnsOf(action: CarrierAction, carrier: number): readonly number[] {
  switch (action.kind) {
    case 'shoot':
      return [ownNumber.one, ownNumber.shotOdds, ownNumber.rush, ownNumber.room];
    case 'stepIn':
      return [ownNumber.one, ownNumber.shotOdds, ownNumber.stepIn, ownNumber.room];
    case 'pass':
      return [ownNumber.one, ownNumber.room, ...numbersOfMate(action.to, carrier)];
    case 'fake':
      return [ownNumber.one, ownNumber.shotOdds, ...numbersOfMate(action.toward, carrier)];
  }
}

function numbersOfMate(mate: number, carrier: number): readonly number[] {
  const begin = mateAt(mate < carrier ? mate : mate - 1);
  return [begin, begin + 1, begin + 2];
}

function mateAt(place: number): number {
  return ownCount + mateCount * place;
}
