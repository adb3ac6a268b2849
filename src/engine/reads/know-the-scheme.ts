import type { Interval } from '../trials/report.ts';
import { type LookNumbers, learnJudgement, worthsByJudgement } from './best-decisions.ts';
import type { DecisionTable } from './decision-table.ts';
import { type Measure, measureIn, measureWhere, type ValuedDecisions } from './measure-decisions.ts';
import { type RuleList, worthsUnder } from './rule-list.ts';
import { isIn, type SchemeSpan } from './scheme-chances.ts';
import { type SearchLimits, searchRuleLists } from './search-rule-lists.ts';

/** What it is worth to know the scheme: to decide, or to choose a card, by what is best against it alone. */
export interface SchemeKnown {
  /** The best decisions that are known, against all schemes by their weights. */
  readonly best: ValuedDecisions;
  /** A card for each scheme in place of one for all: for each number of reads, and how much more than the one for all. */
  readonly cards: readonly (ValuedDecisions & { readonly more: Interval })[];
  readonly byScheme: readonly KnownScheme[];
}

export interface KnownScheme {
  readonly scheme: string;
  /** Goals a chance by the best decisions that are known. */
  readonly best: Interval;
  /** The card for this scheme for each number of reads, and how much more it brings against it than the card for all. */
  readonly cards: readonly { readonly list: RuleList; readonly more: Interval }[];
}

/** A table, the numbers of its looks and where each scheme's chances lie. */
export interface SpannedTable {
  readonly table: DecisionTable;
  readonly numbers: LookNumbers;
  readonly spans: readonly SchemeSpan[];
}

/**
 * Share of what is learnt for one scheme that comes from its own chances; the rest comes from all. A few hundred chances alone would teach a card
 * their luck.
 */
const ownShare = 0.5;

/** Ordered lists that are tried for each number of reads: one search for every scheme has to be quick. */
const lists = 1_000;

/**
 * Learns what is best against each scheme from `learn` and measures it in `held`. `forAll` are what each held chance comes to by the cards for all
 * schemes.
 */
export function knowTheScheme(
  learn: SpannedTable,
  held: SpannedTable,
  forAll: readonly Float64Array[],
  limits: SearchLimits,
  ridge: number,
): SchemeKnown {
  const everywhere = measureIn(held.table);
  const judgement = learnJudgement(learn.table, withScheme(learn, held.spans), ridge);
  const best = worthsByJudgement(judgement, held.table, withScheme(held, held.spans));
  const cards = forAll.map((worths) => Float64Array.from(worths));
  const byScheme = held.spans.map((span): KnownScheme => {
    const within = measureWhere(held.table, isIn(span));
    const found = searchRuleLists(leaningTo(span.scheme, learn), { ...limits, lists }).map(({ list }) => list);
    return {
      scheme: span.scheme,
      best: within.goals(best),
      cards: found.map((list, reads) => {
        const worths = worthsUnder(list, held.table);
        cards[reads]!.set(worths.subarray(span.from, span.to), span.from);
        return { list, more: within.difference(worths, forAll[reads]!) };
      }),
    };
  });
  return {
    best: everywhere.decisions(best),
    cards: cards.map((worths, reads) => moreThan(everywhere, worths, forAll[reads]!)),
    byScheme,
  };
}

/** The numbers of each look, and one more for each scheme: 1 for the scheme it is met against. */
function withScheme({ numbers, spans, table }: SpannedTable, schemes: readonly SchemeSpan[]): LookNumbers {
  const count = numbers.count + schemes.length;
  const looks = numbers.rank_byMoment.length;
  const numbers_byMoment = new Float64Array(looks * count);
  for (let look = 0; look < looks; look++) {
    const begin = look * numbers.count;
    numbers_byMoment.set(numbers.numbers_byMoment.subarray(begin, begin + numbers.count), look * count);
  }
  for (const { scheme, from, to } of spans) {
    const column = numbers.count + schemes.findIndex((one) => one.scheme === scheme);
    if (column < numbers.count) continue;
    const end = table.first_byChance[to];
    for (let look = table.first_byChance[from]; look < end; look++) numbers_byMoment[look * count + column] = 1;
  }
  const more = schemes.map((_, at) => numbers.count + at);
  const everything = [...numbers.columnsOfWaiting, ...more];
  return {
    ...numbers,
    count,
    numbers_byMoment,
    columns_byAction: numbers.columns_byAction.map((columns) =>
      columns === numbers.columnsOfWaiting ? everything : [...columns, ...more],
    ),
    columnsOfWaiting: everything,
  };
}

function moreThan(measure: Measure, worths: Float64Array, others: Float64Array) {
  return { ...measure.decisions(worths), more: measure.difference(worths, others) };
}

/** The table with the weights moved so that a scheme's own chances count for `ownShare` in all. */
function leaningTo(scheme: string, { table, spans }: SpannedTable): DecisionTable {
  const span = spans.find((one) => one.scheme === scheme);
  if (span === undefined) return table;
  const inside = isIn(span);
  const sum = (of: (chance: number) => boolean): number =>
    table.weight_byChance.reduce((all, weight, chance) => all + (of(chance) ? weight : 0), 0);
  const [own, all] = [sum(inside), sum(() => true)];
  if (own === 0 || own === all) return table;
  const weight_byChance = table.weight_byChance.map(
    (weight, chance) => (weight * (1 - ownShare)) / all + (inside(chance) ? (weight * ownShare) / own : 0),
  );
  return { ...table, weight_byChance };
}
