import { weightedMeanInterval } from '../statistics/weighted-mean-interval.ts';
import { buildRunTable, goNow, worthsOfGoingAfter } from './build-run-table.ts';
import { mostRunLooks, type RunnerChance } from './gather-runs.ts';
import type { Keeping } from './learn-keeping.ts';
import { goOn, type RuleList, worthsUnder } from './rule-list.ts';
import { type SearchLimits, searchRuleLists } from './search-rule-lists.ts';

/** When a man is to go: at the first look at which a condition holds, and at look number `latest` in any case. Without a condition that is a fixed time. */
export interface RunList {
  readonly rules: RuleList['rules'];
  /** From 0 (at the order) to `mostRunLooks`. */
  readonly latest: number;
}

/** Some chances of one runner, and what each counts for. */
export interface WeighedRuns {
  readonly runner: number;
  readonly chances: readonly RunnerChance[];
  readonly weight_byChance: Float64Array;
}

export interface FoundRunList {
  readonly list: RunList;
  /** Goals per chance in those that it was searched in: too high by what the search gained from luck. */
  readonly worth: number;
}

/** Latest moments that are tried beside conditions, looks: every second one. */
const latestTried = Array.from({ length: mostRunLooks / 2 }, (_, at) => 2 * (at + 1));

/** Lists that differ by less are the same: then the shorter stays. Goals. */
const tie = 1e-9;

/** The best list of so many conditions or fewer, for none up to the most; more conditions are never worth less. RangeError when there is no chance. */
export function searchRunCards(runs: WeighedRuns, keeping: Keeping, limits: SearchLimits): readonly FoundRunList[] {
  const found: FoundRunList[] = Array.from({ length: limits.mostReads + 1 }, () => bestFixedTime(runs, keeping));
  for (const latest of latestTried) {
    const table = buildRunTable(runs.runner, runs.chances, keeping, latest, runs.weight_byChance);
    searchRuleLists(table, limits).forEach(({ list, worth }, reads) => {
      // A list with something to do in any case does it at once: the best fixed time is no worse.
      if (list.lastResort !== goOn || worth <= found[reads].worth + tie) return;
      found[reads] = { list: { rules: list.rules, latest }, worth };
    });
  }
  return found.map((each, reads) => found.slice(0, reads).reduce(better, each));
}

function better(one: FoundRunList, shorter: FoundRunList): FoundRunList {
  return shorter.worth >= one.worth - tie ? shorter : one;
}

/** The time that is best whatever he sees. */
function bestFixedTime({ chances, weight_byChance }: WeighedRuns, keeping: Keeping): FoundRunList {
  const worth_byLook = Array.from(
    { length: mostRunLooks + 1 },
    (_, look) => weightedMeanInterval(worthsOfGoingAfter(chances, keeping, look), weight_byChance).mean,
  );
  const worth = Math.max(...worth_byLook);
  return { list: { rules: [], latest: worth_byLook.indexOf(worth) }, worth };
}

/** What each chance is worth by a list, goals. */
export function worthsByRunList({ rules, latest }: RunList, runs: WeighedRuns, keeping: Keeping): Float64Array {
  if (rules.length === 0) return Float64Array.from(worthsOfGoingAfter(runs.chances, keeping, latest));
  const table = buildRunTable(runs.runner, runs.chances, keeping, latest, runs.weight_byChance);
  return worthsUnder({ rules: rules.map((rule) => ({ ...rule, action: goNow })), lastResort: goOn }, table);
}
