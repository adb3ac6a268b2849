import { learnKeeping, type SchemeChances, worthOf } from '../../src/engine/index.ts';
import { readsEffort, type TrialPool } from '../../src/worker/index.ts';
import { type DemoCarrier, gather, heldSeed } from './demo-carriers.ts';
import { type Lucky, meanByLuck } from './mean-by-luck.ts';
import { rankCorrelation } from './rank-correlation.ts';
import { askedRow, estimateWords, type Group } from './row.ts';

/** The man whose looks are played to the end; he looks round often enough, and not so often that it takes all day. */
const watched = 'ferry-TR';
/** Longer than any chance. Seconds. */
const wholeChance = 1000;

/** Written down before the first run: goals that worths may be off by, and how alike the orders of actions have to be. */
const asked = { error: 0.01, withinLook: 0.8, onAverage: 0.9 } as const;

/** One look: what each action comes to by the studies, and what it comes to when the chance is played to its end. */
interface JudgedLook {
  readonly short_byAction: readonly number[];
  readonly whole_byAction: readonly number[];
}

/** How well worths that end at the horizon stand for those of the whole chance; `trials` man-ups a scheme, of those that are held. */
export async function readsHorizonGroup(
  pool: TrialPool,
  carriers: readonly DemoCarrier[],
  trials: number,
): Promise<Group> {
  const carrier = carriers.find(({ id }) => id === watched);
  if (carrier === undefined) throw new TypeError(`missing carrier: ${watched}`);
  const { play, man, first, name } = carrier;
  const { horizon } = readsEffort(1);
  const whole = await gather(pool, play, man, heldSeed, { from: first, to: first + trials }, wholeChance);
  const byChance = judgedLooks(carrier, whole);
  const looks = byChance.flatMap((chance) => chance.looks);
  const error = meanByLuck(byChance.map((chance) => ({ luck: chance.luck, value: meanError(chance) })));
  const within = meanByLuck(byChance.flatMap(meanCorrelation));
  const across = rankCorrelation(meanWorths(looks, 'short_byAction'), meanWorths(looks, 'whole_byAction'));
  return {
    id: 'reads-horizon',
    title: 'Reads, worth of an action',
    about: `The studies count ${horizon} s after a decision and add what keeping the ball is worth, learnt from chances that were left to the play. Here every action at every look of ${name} is played to the chance's end as well, with the same luck: ${looks.length} looks in ${byChance.length} chances. Chances count the same, whatever the number of their looks.`,
    rows: [
      askedRow(
        { id: 'reads-horizon-error', what: `worth by ${horizon} s less that of the whole chance, mean` },
        `within ${asked.error} of 0`,
        estimateWords(error),
        'mean',
        Math.abs(error.mean) <= asked.error,
      ),
      askedRow(
        { id: 'reads-horizon-look', what: 'rank correlation of the actions of one look, mean' },
        `${asked.withinLook} or more`,
        estimateWords(within),
        'mean',
        within.mean >= asked.withinLook,
      ),
      askedRow(
        { id: 'reads-horizon-actions', what: 'rank correlation of the mean worths of the actions' },
        `${asked.onAverage} or more`,
        (across ?? 0).toFixed(3),
        'as it is',
        (across ?? 0) >= asked.onAverage,
      ),
    ],
  };
}

interface JudgedChance {
  readonly luck: number;
  readonly looks: readonly JudgedLook[];
}

/** The looks of each chance that was played to its end. */
function judgedLooks({ learn, held }: DemoCarrier, whole: readonly SchemeChances[]): readonly JudgedChance[] {
  const keeping = learnKeeping(learn.flatMap(({ chances }) => chances));
  return whole.flatMap(({ scheme, chances }) => {
    const short = held.find((one) => one.scheme === scheme)!.chances;
    return chances.map(({ trial, looks }) => {
      const same = short.find((one) => one.trial === trial)!;
      const judged = looks.map(({ outcome_byAction }, at) => ({
        short_byAction: same.looks[at]!.outcome_byAction.map((outcome) => worthOf(outcome, keeping)),
        whole_byAction: outcome_byAction.map(({ goals }) => goals),
      }));
      return { luck: trial, looks: judged };
    });
  });
}

function meanError({ looks }: JudgedChance): number {
  const errorOf = ({ short_byAction, whole_byAction }: JudgedLook): number =>
    average(short_byAction.map((worth, action) => worth - whole_byAction[action]!));
  return average(looks.map(errorOf));
}

/** Over the looks of a chance that have an order; none when no look has. */
function meanCorrelation({ luck, looks }: JudgedChance): readonly Lucky[] {
  const known = looks.flatMap((look) => rankCorrelation(look.short_byAction, look.whole_byAction) ?? []);
  return known.length === 0 ? [] : [{ luck, value: average(known) }];
}

function meanWorths(looks: readonly JudgedLook[], worths: keyof JudgedLook): readonly number[] {
  return looks[0]![worths].map((_, action) => average(looks.map((look) => look[worths][action]!)));
}

function average(values: readonly number[]): number {
  return values.reduce((sum, each) => sum + each, 0) / values.length;
}
