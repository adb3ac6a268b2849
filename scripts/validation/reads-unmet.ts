import {
  type Estimate,
  type LearntDecisions,
  learnDecisions,
  type SchemeChances,
  type TriedDecisions,
  tryDecisions,
} from '../../src/engine/index.ts';
import { readsEffort } from '../../src/worker/index.ts';
import type { DemoCarrier } from './demo-carriers.ts';
import { asManyOfAll, leaveEachOut } from './leave-one-out.ts';
import { meanByLuck } from './mean-by-luck.ts';
import { askedRow, estimateWords, type Group, type Row } from './row.ts';

/**
 * Goals a chance that not having met a scheme may cost. Of all schemes together the mean is asked; of a single scheme, where the mean hangs on luck, that
 * it is not surely more.
 */
const mostLost = 0.01;

const reads = 3;

/** What is learnt from chances, by which the ways to decide are told apart. */
const ways = {
  judgement: 'best decisions',
  three: 'card of three',
  advised: 'card as long as is worth holding',
} as const;
type Way = keyof typeof ways;
const wayList = Object.keys(ways) as readonly Way[];

/** One held chance: what each way gains over the play in it, by who has met the scheme and by who has not. */
interface Gains {
  readonly scheme: string;
  /** The same against every scheme. */
  readonly luck: number;
  readonly met: Readonly<Record<Way, number>>;
  readonly unmet: Readonly<Record<Way, number>>;
}

/** What decisions and cards lose against a scheme that nothing was learnt from. */
export function readsUnmetGroup(carriers: readonly DemoCarrier[]): Group {
  const gains = carriers.flatMap(gainsOf);
  const schemes = [...new Set(gains.map(({ scheme }) => scheme))];
  const byScheme = schemes.map((scheme) => ({ scheme, those: gains.filter((each) => each.scheme === scheme) }));
  const losses = byScheme.map(({ scheme, those }) => ({ scheme, lost: lossOf(those, 'three') }));
  const hardest = losses.reduce((worst, each) => (each.lost.mean > worst.lost.mean ? each : worst));
  return {
    id: 'reads-unmet',
    title: 'Reads, schemes not met',
    about: `The same chances. What is learnt against eight of the nine schemes is measured against the ninth, beside what is learnt against all nine from as many man-ups in all. Chances of all men of the demo plays together, each counting the same; losses are of pairs. With so few chances the mean of a single scheme hangs on luck, so there it is asked that the loss is not surely more; the mean was asked there too until a trial with nine man-ups a scheme had been seen. By the card of three ${hardest.scheme} is the hardest to read unmet: ${estimateWords(hardest.lost)} lost.`,
    rows: wayList.flatMap((way) => [
      ...byScheme.map(({ scheme, those }) => lossRow(way, those, scheme)),
      lossRow(way, gains, null),
    ]),
  };
}

function gainsOf(carrier: DemoCarrier): readonly Gains[] {
  const { play, man, learn, held, first } = carrier;
  const { limits } = readsEffort(1);
  const learnFrom = (some: readonly SchemeChances[]) => learnDecisions(play, man, some, limits);
  const all = learnFrom(asManyOfAll(learn, first));
  return leaveEachOut(learn, held).flatMap((left): readonly Gains[] => {
    if (left.held.every(({ chances }) => chances.length === 0)) return [];
    const others = learnFrom(left.unmet);
    const [met, unmet] = [all, others].map((learnt) => gainsBy(learnt, tryDecisions(play, man, learnt, left.held)));
    const lucks = left.held.flatMap(({ chances }) => chances.map(({ trial }) => trial));
    return lucks.map((luck, chance) => ({ scheme: left.scheme, luck, met: met![chance]!, unmet: unmet![chance]! }));
  });
}

/** What each way gains in each chance. */
function gainsBy(
  { unmet: { worthHolding } }: LearntDecisions,
  { table, byBest, byLists }: TriedDecisions,
): readonly Readonly<Record<Way, number>>[] {
  return Array.from(table.goOn_byChance, (goOn, chance) => ({
    judgement: byBest[chance]! - goOn,
    three: byLists[reads]![chance]! - goOn,
    advised: byLists[worthHolding]![chance]! - goOn,
  }));
}

function lossOf(gains: readonly Gains[], way: Way): Estimate {
  return meanByLuck(gains.map(({ luck, met, unmet }) => ({ luck, value: met[way] - unmet[way] })));
}

/** Against one scheme, or against all, each left out in turn, when it is `null`. */
function lossRow(way: Way, gains: readonly Gains[], scheme: string | null): Row {
  const lost = lossOf(gains, way);
  const gainOf = (who: 'met' | 'unmet') =>
    meanByLuck(gains.map((each) => ({ luck: each.luck, value: each[who][way] })));
  const [met, unmet] = [gainOf('met'), gainOf('unmet')];
  return askedRow(
    { id: `reads-unmet-${way}-${scheme ?? 'all'}`, what: `${ways[way]}, ${scheme ?? 'each left out in turn'}` },
    `${mostLost} lost at most`,
    `${estimateWords(lost)} lost: gains ${estimateWords(unmet)} unmet, ${estimateWords(met)} met; ${gains.length} chances`,
    scheme === null ? 'mean' : 'low end',
    (scheme === null ? lost.mean : lost.low) <= mostLost,
  );
}
