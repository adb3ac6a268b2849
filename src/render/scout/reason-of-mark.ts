import { dutyNames, type MarkReason, type ReasonMan, type TickReason } from '../../engine/index.ts';
import { tenth } from '../number-text.ts';
import { placeWords } from '../play-scene.ts';
import { dutyClause } from '../words.ts';

/** Who is who in a reason. */
export interface ReasonNames {
  /** The six, in the order of the film's spots. */
  readonly spots: readonly string[];
  readonly schemes: readonly { readonly name: string; readonly men: readonly string[] }[];
}

/** Odds as people say them: "9 to 1"; more than a hundred says no more than a hundred. */
export function oddsWords(odds: number): string {
  if (odds >= 99.5) return 'more than 100 to 1';
  return odds >= 9.95 ? `${Math.round(odds)} to 1` : `${tenth(odds)} to 1`;
}

/** Nearer than this the man is meant and no other. Yards. */
const isHim = 2.5;

/**
 * Why a mark speaks for a scheme, in one sentence: where it is, who of the scheme belongs there then, and who of the other scheme is nearest. `ball` is who has it.
 *
 * "Ball with P, a man in the middle, 11 above the goal line: 9.0 to 1 for the box with crease string (c on the ball), against the box-and-one zone (nearest is tr, splits P and TR, 4.2 yd away)."
 */
export function reasonOfMark(reason: MarkReason, ball: string, names: ReasonNames): string {
  const { at, odds, speaksFor, against, man, instead } = reason;
  const [mine, other] = [names.schemes[speaksFor]!, names.schemes[against]!];
  const meant = manWords(man, mine.men, names.spots);
  const who = man.away <= isHim ? meant : `nearest is ${meant}, ${tenth(man.away)} yd away`;
  const off = `nearest is ${manWords(instead, other.men, names.spots)}, ${tenth(instead.away)} yd away`;
  return `Ball with ${ball}, a man ${placeWords(at)}: ${oddsWords(odds)} for ${mine.name} (${who}), against ${other.name} (${off}).`;
}

function manWords({ defender, kind, a, b }: ReasonMan, men: readonly string[], spots: readonly string[]): string {
  const name = (man: number): string | undefined => (man < 0 ? undefined : spots[man]);
  return dutyClause(men[defender] ?? '', dutyNames[kind] ?? 'place', name(a), name(b));
}

/**
 * Why a tick speaks for a scheme, in one sentence. `words` are those of the sign, as a statement.
 *
 * "Seen: two men went to the ball outside: 3.1 to 1 for Box-and-one zone, against Jump."
 */
export function reasonOfTick(
  { odds, speaksFor, against }: TickReason,
  seen: boolean,
  words: string,
  { schemes }: ReasonNames,
): string {
  const clause = `${words.charAt(0).toLowerCase()}${words.slice(1)}`;
  return `${seen ? 'Seen' : 'Not seen'}: ${clause}: ${oddsWords(odds)} for ${schemes[speaksFor]!.name}, against ${schemes[against]!.name}.`;
}
