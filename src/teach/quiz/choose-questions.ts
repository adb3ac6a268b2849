import type { CarrierMoment } from '../../engine/index.ts';
import type { OfferedMoment } from './offered-choices.ts';

/** A moment that could be asked about. */
export interface PossibleQuestion {
  readonly scheme: string;
  readonly moment: CarrierMoment;
  readonly offered: OfferedMoment;
  /** Something on the field shows the best choice. */
  readonly hasSign: boolean;
  /** The play teaches something for it. */
  readonly isTaught: boolean;
}

/** A gap of this many goals is as plain as any. */
const plain = 0.15;
/** What it costs a question that others like it are in the quiz already, as a share of what a plain gap is worth: for each of them. */
const likeness = { carrier: 0.2, scheme: 0.15, right: 0.3, button: 0.12 } as const;
/** What it is worth more when there is something to see, and when it is one of the coach's own reads: on the same scale. */
const bonus = { sign: 0.25, taught: 0.2 } as const;
/** Looks of one man-up nearer than this ask nearly the same. Seconds. */
const apart = 1.5;

/**
 * The questions of a quiz, at most so many: one after the other the one that is told apart most plainly and is least like those that are in it, by carrier, scheme,
 * right answer and the button it stands on. In the order of the choice. The answer does not depend on the order of what is given but where two are equal.
 */
export function chooseQuestions(possible: readonly PossibleQuestion[], most: number): readonly PossibleQuestion[] {
  const chosen: PossibleQuestion[] = [];
  let left = possible;
  while (chosen.length < most && left.length > 0) {
    const values = left.map((one) => valueBeside(one, chosen));
    const next = left[values.indexOf(Math.max(...values))]!;
    chosen.push(next);
    left = left.filter((one) => one !== next && !isNearly(one, next));
  }
  return chosen;
}

function valueBeside(one: PossibleQuestion, chosen: readonly PossibleQuestion[]): number {
  const alike = (same: (other: PossibleQuestion) => boolean): number => chosen.filter(same).length;
  return (
    Math.min(one.offered.gap, plain) / plain +
    (one.hasSign ? bonus.sign : 0) +
    (one.isTaught ? bonus.taught : 0) -
    likeness.carrier * alike(({ moment }) => moment.carrier === one.moment.carrier) -
    likeness.scheme * alike(({ scheme }) => scheme === one.scheme) -
    likeness.right * alike((other) => rightOf(other) === rightOf(one)) -
    likeness.button * alike(({ offered }) => offered.best === one.offered.best)
  );
}

/** What is right there, of whichever man: "shoot", "pass 3". */
function rightOf({ offered: { choices, best } }: PossibleQuestion): string {
  const { action } = choices[best]!;
  return action.kind === 'pass' ? `pass ${action.to}` : action.kind;
}

function isNearly(one: PossibleQuestion, other: PossibleQuestion): boolean {
  return (
    one.scheme === other.scheme &&
    one.moment.trial === other.moment.trial &&
    one.moment.carrier === other.moment.carrier &&
    Math.abs(one.moment.time - other.moment.time) < apart
  );
}
