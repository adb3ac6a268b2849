import type { LookNumbers } from './best-decisions.ts';
import type { DecisionTable } from './decision-table.ts';
import { tableOfChances, type WrittenChance } from './table-of-chances.fixture.ts';

// Behind one of two doors is a tiger, behind the other a reward. He may open a door, or listen once more, which costs something and is right
// most of the time. After a door is opened everything begins anew. Listening is waiting for the next look, opening is acting.
// The numbers are those of Kaelbling, Littman and Cassandra 1998, Artificial Intelligence 101:99, section 5.
const rightEar = 0.85;
const listening = -1;
const reward = 10;
const tiger = -100;

export interface TigerProblem {
  /** Looks before the table leaves him, the first of them before he has heard anything. */
  readonly looks: number;
  /** What the next step counts in this one; 1 for the same. */
  readonly discount: number;
  /** What comes after a door was opened in a step, steps numbered from 0. Worth in the step that follows it. */
  readonly after: (step: number) => number;
  /** What it comes to when he has opened no door at any look. Worth at the beginning. */
  readonly never: number;
}

const nets = [1, 2, 3];
export const tigerCues = nets.flatMap((net) => [`${net} more left`, `${net} more right`]);
export const tigerActions = ['open left', 'open right'] as const;

/** All that there is to hear with the tiger behind each door, each way that it can go once, weighed by how likely it is. */
export function tigerTable(problem: TigerProblem): DecisionTable {
  return tableOfChances(
    tigerCues.length,
    waysOf(problem).map(({ isLeft, heard }) => writtenChance(problem, isLeft, heard)),
  );
}

/** What he believes at each look of that table, in numbers: he knows how likely the tiger is left, and no more. */
export function tigerBeliefs(problem: TigerProblem): LookNumbers {
  const moments = waysOf(problem).flatMap(({ heard }) =>
    looksOf(problem).map((step) => ({ step, net: heardLeft(heard, step) })),
  );
  return {
    count: 7,
    numbers_byMoment: Float64Array.from(
      moments.flatMap(({ step, net }) => {
        const left = rightEar ** net / (rightEar ** net + (1 - rightEar) ** net);
        const sure = (left - 0.5) ** 2;
        const counts = problem.discount ** step;
        const anyway = costOfListening(problem, step) + counts * problem.discount * problem.after(step);
        return [1, left, sure, sure ** 2, anyway, counts, counts * left];
      }),
    ),
    rank_byMoment: Int32Array.from(moments, ({ step }) => step),
    columns_byAction: [
      [5, 6, 4],
      [5, 6, 4],
    ],
    columnsOfWaiting: [0, 1, 2, 3],
  };
}

/** What so many listenings come to, at the beginning. */
export function costOfListening({ discount }: Pick<TigerProblem, 'discount'>, count: number): number {
  return Array.from({ length: count }, (_, step) => listening * discount ** step).reduce((sum, each) => sum + each, 0);
}

/** What he has heard, in order: 1 for the left, -1 for the right. */
type Heard = readonly number[];

function looksOf({ looks }: TigerProblem): readonly number[] {
  return Array.from({ length: looks }, (_, step) => step);
}

function waysOf({ looks }: TigerProblem): readonly { readonly isLeft: boolean; readonly heard: Heard }[] {
  const heard = (count: number): readonly Heard[] =>
    count === 0 ? [[]] : heard(count - 1).flatMap((before) => [1, -1].map((now) => [...before, now]));
  return [true, false].flatMap((isLeft) => heard(looks - 1).map((each) => ({ isLeft, heard: each })));
}

function writtenChance(problem: TigerProblem, isLeft: boolean, heard: Heard): WrittenChance {
  const right = heard.filter((each) => each > 0 === isLeft).length;
  return {
    weight: 0.5 * rightEar ** right * (1 - rightEar) ** (heard.length - right),
    looks: looksOf(problem).map((step) => ({
      cues: cuesAt(heardLeft(heard, step)),
      worths: [isLeft ? tiger : reward, isLeft ? reward : tiger].map(
        (found) =>
          costOfListening(problem, step) + problem.discount ** step * (found + problem.discount * problem.after(step)),
      ),
    })),
    goOn: problem.never,
  };
}

/** How much more often he has heard it left than right before a look. */
function heardLeft(heard: Heard, step: number): number {
  return heard.slice(0, step).reduce((sum, each) => sum + each, 0);
}

function cuesAt(moreLeft: number): number {
  return nets.reduce(
    (bits, net, at) => bits | (moreLeft >= net ? 1 << (2 * at) : 0) | (moreLeft <= -net ? 2 << (2 * at) : 0),
    0,
  );
}
