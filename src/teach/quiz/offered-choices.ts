import {
  type CarrierMoment,
  type JudgedAction,
  judgeMoment,
  type Keeping,
  type MomentAction,
  type MomentOutcomes,
  momentActions,
  type Play,
} from '../../engine/index.ts';

/**
 * Choices whose worths lie this near to each other are both right, goals: of fifty man-ups that is one goal, and a unit has fewer than that in a season. Also about
 * what 96 futures can tell apart.
 */
export const nearTie = 0.02;
/** Two that are both right must be told to be near: by the interval the worse is behind by no more than this, goals. */
const surelyNear = 0.05;
/** Nobody is told that he was wrong for less than this, goals: twice a near tie. */
export const plainlyWorse = 2 * nearTie;
/** The fewest choices of a question; the most are as many as a man of the level can hold in mind (`mostReadsAt`). */
export const fewestChoices = 3;

/** One choice of a question. */
export interface OfferedChoice {
  readonly action: MomentAction;
  /** What going on with the play means, where that is known; else null. */
  readonly drawn: MomentAction | null;
  readonly judged: JudgedAction;
  readonly right: boolean;
}

/** What a question offers at one moment. */
export interface OfferedMoment {
  /** In the order in which they are shown. */
  readonly choices: readonly OfferedChoice[];
  /** Index of the one that is worth most. */
  readonly best: number;
  /** How far the nearest wrong choice lies behind, goals: how plainly right and wrong are told apart. */
  readonly gap: number;
  /** What the read that applies is worth less than the best; null when it asks for what is not weighed, or no read applies. */
  readonly taughtBehind: number | null;
}

/**
 * The choices of a question, or undefined where right and wrong cannot be told apart surely enough to ask. Offered are the best, one that is as good, and what is
 * surely worse; what futures cannot tell from the best is left out, so that nobody is judged by luck. A call for the reset is offered only where a read asks for it.
 *
 * `read` is the index of the read that applies here, `most` how many choices are offered at most, 3 or more.
 */
export function offeredChoices(
  play: Play,
  moment: CarrierMoment,
  { outcome_byFuture_byAction }: Pick<MomentOutcomes, 'outcome_byFuture_byAction'>,
  keeping: Keeping,
  read: number | undefined,
  most: number,
): OfferedMoment | undefined {
  const all = momentActions(play, moment.carrier);
  const taught = read === undefined ? -1 : all.findIndex((action) => isAskedBy(play, action, read));
  const first = judgeMoment({ outcome_byFuture_byAction }, keeping);
  const drawn = drawnAs(all, { outcome_byFuture_byAction }, first.actions, moment.asked);
  const shownAs = all[drawn.find((at) => all[at]!.kind !== 'hold' && all[at]!.kind !== 'taught') ?? -1] ?? null;
  const kept = all.flatMap((action, at) => {
    if (drawn.includes(at)) return [];
    if (action.kind === 'taught' || action.kind === 'reset') return at === taught ? [at] : [];
    return [at];
  });
  const { actions, best } = judgeMoment(
    { outcome_byFuture_byAction: kept.map((at) => outcome_byFuture_byAction[at]!) },
    keeping,
  );
  const candidates = kept.map((at, index): Candidate => {
    const judged = actions[index]!;
    const action = all[at]!;
    return {
      action,
      judged,
      drawn: action.kind === 'goOn' ? shownAs : null,
      isTaught: at === taught,
      is: verdictOf(judged, index === best),
    };
  });
  const chosen = chosenOf(candidates, most);
  if (chosen === undefined) return undefined;
  const choices = candidates
    .filter((candidate) => chosen.includes(candidate))
    .map(({ action, judged, drawn: asked, is }) => ({
      action,
      judged,
      drawn: asked,
      right: is === 'best' || is === 'tie',
    }));
  const taughtAt = drawn.includes(taught) ? all.findIndex(({ kind }) => kind === 'goOn') : taught;
  return {
    choices,
    best: choices.findIndex(({ judged }) => judged === actions[best]),
    gap: Math.min(...choices.filter(({ right }) => !right).map(({ judged }) => judged.behind.mean)),
    taughtBehind: actions[kept.indexOf(taughtAt)]?.behind.mean ?? null,
  };
}

interface Candidate {
  readonly action: MomentAction;
  readonly judged: JudgedAction;
  readonly drawn: MomentAction | null;
  readonly isTaught: boolean;
  readonly is: Verdict;
}

/** `unsure`: neither surely as good nor plainly worse. */
type Verdict = 'best' | 'tie' | 'wrong' | 'unsure';

function verdictOf({ behind }: JudgedAction, isBest: boolean): Verdict {
  if (isBest) return 'best';
  if (behind.mean <= nearTie && behind.high <= surelyNear) return 'tie';
  return behind.mean >= plainlyWorse && behind.low > 0 ? 'wrong' : 'unsure';
}

/** Of so many futures in which two actions come to the very same they are one action. */
const sameShare = 0.8;

/**
 * What going on with the play comes to, where it is something that has a button of its own: that is then not offered beside it. The pass that the play is waiting to have thrown, where
 * the two are worth the same (they differ where he is still on his way to where he throws from); else what ends as it does in most futures, like a shot that the play has him take.
 */
function drawnAs(
  all: readonly MomentAction[],
  { outcome_byFuture_byAction: outcomes }: Pick<MomentOutcomes, 'outcome_byFuture_byAction'>,
  judged: readonly JudgedAction[],
  asked: number,
): readonly number[] {
  const goOn = all.findIndex(({ kind }) => kind === 'goOn');
  return all.flatMap((action, at) => {
    if (at === goOn) return [];
    const isAsked = action.kind === 'pass' && action.to === asked;
    if (isAsked && Math.abs(judged[at]!.worth.mean - judged[goOn]!.worth.mean) <= nearTie) return [at];
    const same = outcomes[at]!.filter(
      ({ goals, left }, future) => goals === outcomes[goOn]![future]!.goals && left === outcomes[goOn]![future]!.left,
    );
    return same.length >= sameShare * outcomes[at]!.length ? [at] : [];
  });
}

function chosenOf(candidates: readonly Candidate[], most: number): readonly Candidate[] | undefined {
  const best = candidates.find(({ is }) => is === 'best')!;
  const tie = candidates
    .filter(({ is, action }) => is === 'tie' && action.kind !== 'hold' && !isSameIn(action, best.action))
    .sort(byWorth)
    .slice(0, 1);
  const wrong = candidates
    .filter(({ is }) => is === 'wrong')
    .sort((one, other) => temptation(other) - temptation(one) || byWorth(one, other));
  const chosen = [best, ...tie, ...wrong].slice(0, most);
  const wrongOnes = chosen.filter(({ is }) => is === 'wrong').length;
  return chosen.length < fewestChoices || wrongOnes < 2 ? undefined : chosen;
}

/** To hold, to step in and to shoot end alike where he is free: two of them beside each other would be one choice twice. */
function isSameIn(one: MomentAction, other: MomentAction): boolean {
  const isOwn = ({ kind }: MomentAction): boolean => kind === 'shoot' || kind === 'stepIn' || kind === 'hold';
  return isOwn(one) && isOwn(other);
}

/** What a player would fall for: what he was taught, what the play goes on with, a shot of his own; then what is nearest in worth. */
function temptation({ action, isTaught }: Candidate): number {
  if (isTaught) return 3;
  if (action.kind === 'goOn') return 2;
  return action.kind === 'shoot' ? 1 : 0;
}

function byWorth(one: Candidate, other: Candidate): number {
  return other.judged.worth.mean - one.judged.worth.mean;
}

function isAskedBy(play: Play, action: MomentAction, read: number): boolean {
  const { then } = play.reads[read]!;
  switch (then.kind) {
    case 'pass':
      return action.kind === 'pass' && play.spots[action.to]!.id === then.to;
    case 'shot':
      return action.kind === 'shoot';
    case 'runIn':
      return action.kind === 'stepIn';
    case 'reset':
      return action.kind === 'reset';
    case 'fake':
      return false;
    default:
      return action.kind === 'taught' && action.read === read;
  }
}
