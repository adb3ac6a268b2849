import type { ForcedTrial } from '../looks/force-looks.ts';
import type { Play } from '../offense/play.ts';
import { carrierActions } from './carrier-actions.ts';
import type { DecisionTable } from './decision-table.ts';
import { type CarrierLook, forcedBy } from './gather-decisions.ts';
import { actedBy, type RuleList } from './rule-list.ts';
import { allChances, type SchemeChances, spansOf } from './scheme-chances.ts';

/** A real trial in which a read of a card is acted on. */
export interface ReadExample {
  readonly scheme: string;
  /** Seconds after the restart at which he sees the cue. */
  readonly time: number;
  /** Seconds after the play's first beat then. */
  readonly sinceStart: number;
  /** Cues that hold then, bit i for cue i of his vocabulary. */
  readonly cues: number;
  /** Runs the trial up to there as the play has it, and has him do it. */
  readonly forced: ForcedTrial;
  /** How many chances there were to choose from. */
  readonly of: number;
}

/**
 * For each read of a card the example that shows it as it usually goes: of the chances in which it is acted on, the one in the middle by what it
 * gains over leaving it to the play. `null` where there is none. `table` is that of the chances.
 */
export function examplesOf(
  play: Play,
  carrier: number,
  list: RuleList,
  gathered: readonly SchemeChances[],
  table: DecisionTable,
): readonly (ReadExample | null)[] {
  const acted = Array.from(table.goOn_byChance, (_, chance) => ({ chance, ...actedBy(list, table, chance) }));
  const chances = allChances(gathered);
  const spans = spansOf(gathered);
  return list.rules.map(({ action }, rule) => {
    const his = acted.filter((one) => one.rule === rule && table.weight_byChance[one.chance] > 0);
    const gainOf = ({ chance, moment }: (typeof his)[number]): number =>
      table.worth_byMomentAction[moment * table.actions + action] - table.goOn_byChance[chance];
    const middle = his.sort((one, other) => gainOf(one) - gainOf(other))[his.length >> 1];
    if (middle === undefined) return null;
    const { trial, looks } = chances[middle.chance]!;
    const look: CarrierLook = looks[middle.moment - table.first_byChance[middle.chance]]!;
    const { scheme } = spans.find(({ from, to }) => middle.chance >= from && middle.chance < to)!;
    const forced = { trial, ...forcedBy(play, carrier, carrierActions(play, carrier)[action]!, look) };
    return { scheme, time: look.time, sinceStart: look.sinceStart, cues: look.cues, forced, of: his.length };
  });
}
