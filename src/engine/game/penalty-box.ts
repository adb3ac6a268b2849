import type { RuleCode } from '../field/rule-code.ts';
import { type BoxEvent, type BoxedPenalty, type GivenPenalty, otherSide, type TeamSide } from './penalty.ts';

/** What of a rule code the box goes by. */
export type BoxRules = Pick<RuleCode, 'counts' | 'penalties'>;

/** Everybody who was sent off, as it stands at a moment of play. */
export interface PenaltyBox {
  /** Seconds of play. */
  readonly at: number;
  /** In the order in which they were given. */
  readonly penalties: readonly BoxedPenalty[];
  /** Men that each team is short at this moment; none where the code has fouls served without it (under 12). */
  readonly short: Readonly<Record<TeamSide, number>>;
}

/** Shorter than any clock shows, s: what is left under this is served. */
const instant = 1e-6;

/**
 * The box at a moment of play, from all that happened until then.
 *
 * A penalty's time runs while play does. What no goal ends is served first. A goal ends the other team's penalties that are being served and have
 * nothing of that left: all of them, or the one that was given first, as the code says. A team is never more than `mostShort` men short: later ones wait,
 * and begin when a man of theirs is free. Of fouls at the same time the shorter time is fixed on both sides (`fixedBySimultaneous`).
 *
 * Events may come in any order of `at`; those of one moment count in the order given. RangeError for times that are no number or under 0. Rules and their sources:
 * `penalties` and `counts` of the rule codes.
 */
export function penaltyBox(rules: BoxRules, events: readonly BoxEvent[], at: number): PenaltyBox {
  checkTime('moment', at);
  for (const event of events) checkTime(event.kind, event.at);
  const inOrder = events
    .map((event, order) => ({ event, order }))
    .filter(({ event }) => event.at <= at)
    .sort((one, other) => one.event.at - other.event.at || one.order - other.order);
  let box: readonly BoxedPenalty[] = [];
  let now = 0;
  for (const { event } of inOrder) {
    box = serve(rules, box, now, event.at);
    now = event.at;
    box = fill(rules, happen(rules, box, event));
  }
  box = serve(rules, box, now, at);
  return { at, penalties: box, short: { us: shortOf(rules, box, 'us'), them: shortOf(rules, box, 'them') } };
}

/** What stands first, once the fouls of both sides are at the same time: the part of each man's that no goal ends, s. */
export function fixedBySimultaneous(penalty: GivenPenalty, all: readonly GivenPenalty[]): number {
  // The longest of the other side: as read, the shorter of two matching times is served in full by both. Several on a side are to be confirmed.
  const others = all.filter(({ side }) => side !== penalty.side).map(({ seconds }) => seconds);
  const matched = Math.min(penalty.seconds, Math.max(0, ...others));
  return Math.max(penalty.fixedSeconds, matched);
}

/**
 * Who has the ball after fouls at the same time: the team with less time to serve; `null` where both have as much, and the ball stays with who had it
 * (from memory).
 */
export function ballAfterSimultaneous(all: readonly GivenPenalty[]): TeamSide | null {
  const time = (of: TeamSide): number => all.reduce((sum, { side, seconds }) => sum + (side === of ? seconds : 0), 0);
  const [us, them] = [time('us'), time('them')];
  if (us === them) return null;
  return us < them ? 'us' : 'them';
}

/**
 * When each man that a side is short is back, if nothing more happens, s of play from the box's moment; the first comes first. Whoever's time ends while another waits makes
 * room for him alone: the side is as short as before. Penalties that go with men over in full strength count for nothing here, as in `short`.
 */
export function timesBack(rules: BoxRules, { penalties }: PenaltyBox, side: TeamSide): readonly number[] {
  let box: readonly BoxedPenalty[] = penalties.filter((one) => one.side === side);
  let now = 0;
  const times: number[] = [];
  for (let short = shortOf(rules, box, side); short > 0; short = shortOf(rules, box, side)) {
    const step = Math.min(...box.filter(({ state }) => state === 'serving').map(({ left }) => left));
    box = serve(rules, box, 0, step);
    now += step;
    for (let back = shortOf(rules, box, side); back < short; back++) times.push(now);
  }
  return times;
}

function happen(rules: BoxRules, box: readonly BoxedPenalty[], event: BoxEvent): readonly BoxedPenalty[] {
  switch (event.kind) {
    case 'given':
      return [...box, ...givenNow(rules, event, box.length)];
    case 'goal':
      return afterGoal(rules, box, event);
    case 'letGo':
      return box.map((one) => (one.number === event.penalty && isOpen(one) ? over(one, 'released', event.at) : one));
    case 'timeSet':
      return box.map((one) => (one.number === event.penalty && isOpen(one) ? withLeft(one, event.left) : one));
    default:
      return exhaustive(event);
  }
}

/** What no goal ends stays: all of it where that was all, else as much as there is room for. */
function withLeft(one: BoxedPenalty, left: number): BoxedPenalty {
  if (!(Number.isFinite(left) && left > 0)) throw new RangeError(`invalid time left: ${left} s (expected more than 0)`);
  const isFixed = one.fixedLeft >= one.left - instant;
  return { ...one, left, fixedLeft: isFixed ? left : Math.min(one.fixedLeft, left) };
}

function givenNow(
  { penalties }: BoxRules,
  { penalties: given, simultaneous }: Extract<BoxEvent, { kind: 'given' }>,
  first: number,
): readonly BoxedPenalty[] {
  return given.map((penalty, at) => {
    checkPenalty(penalty);
    const isMatched = simultaneous && penalties.simultaneousNonReleasable.value;
    const fixedSeconds = isMatched ? fixedBySimultaneous(penalty, given) : penalty.fixedSeconds;
    return {
      ...penalty,
      fixedSeconds,
      number: first + at,
      state: 'waiting',
      left: penalty.seconds,
      fixedLeft: fixedSeconds,
      endedAt: null,
    };
  });
}

function afterGoal(
  { penalties }: BoxRules,
  box: readonly BoxedPenalty[],
  { by, at }: Extract<BoxEvent, { kind: 'goal' }>,
): readonly BoxedPenalty[] {
  if (!penalties.goalReleases.value) return box;
  const side = otherSide(by);
  // Where the part that no goal ends is served last, what stands before it is ended, and that part begins.
  const isFree = (one: BoxedPenalty): boolean =>
    penalties.nonReleasableFirst.value ? one.fixedLeft <= instant : one.left > one.fixedLeft + instant;
  const free = box.filter((one) => one.side === side && one.state === 'serving' && isFree(one));
  const freed = penalties.goalReleasesAll.value ? free : free.slice(0, 1);
  return box.map((one) => {
    if (!freed.includes(one)) return one;
    return one.fixedLeft <= instant ? over(one, 'released', at) : { ...one, left: one.fixedLeft };
  });
}

/** Time runs: from one end of a penalty to the next, since each may let another begin. */
function serve(rules: BoxRules, box: readonly BoxedPenalty[], from: number, to: number): readonly BoxedPenalty[] {
  let now = from;
  let served = box;
  while (now < to) {
    const serving = served.filter(({ state }) => state === 'serving');
    if (serving.length === 0) break;
    const step = Math.min(to - now, ...serving.map(({ left }) => left));
    now += step;
    served = fill(
      rules,
      served.map((one) => (one.state === 'serving' ? afterSeconds(rules, one, step, now) : one)),
    );
  }
  return served;
}

function afterSeconds({ penalties }: BoxRules, one: BoxedPenalty, seconds: number, now: number): BoxedPenalty {
  const left = one.left - seconds;
  if (left <= instant) return over(one, 'served', now);
  const fixedLeft = penalties.nonReleasableFirst.value
    ? Math.max(0, one.fixedLeft - seconds)
    : Math.min(one.fixedLeft, left);
  return { ...one, left, fixedLeft };
}

/** Who waits begins to serve as soon as his team may be shorter, in the order in which the penalties were given. */
function fill({ counts }: BoxRules, box: readonly BoxedPenalty[]): readonly BoxedPenalty[] {
  const room = { us: counts.mostShort.value, them: counts.mostShort.value };
  for (const { side, state } of box) if (state === 'serving') room[side] -= 1;
  return box.map((one) => {
    if (one.state !== 'waiting' || room[one.side] <= 0) return one;
    room[one.side] -= 1;
    return { ...one, state: 'serving' };
  });
}

function over(one: BoxedPenalty, state: 'served' | 'released', endedAt: number): BoxedPenalty {
  return { ...one, state, left: 0, fixedLeft: 0, endedAt };
}

function isOpen({ state }: BoxedPenalty): boolean {
  return state === 'serving' || state === 'waiting';
}

function shortOf({ penalties }: BoxRules, box: readonly BoxedPenalty[], side: TeamSide): number {
  if (!penalties.playedShort.value) return 0;
  return box.filter((one) => one.side === side && one.state === 'serving').length;
}

function checkTime(what: string, at: number): void {
  if (!(Number.isFinite(at) && at >= 0)) throw new RangeError(`invalid time of ${what}: ${at} (expected 0 s or more)`);
}

function checkPenalty({ seconds, fixedSeconds }: GivenPenalty): void {
  if (!(Number.isFinite(seconds) && seconds > 0)) {
    throw new RangeError(`invalid penalty: ${seconds} s (expected more than 0)`);
  }
  if (!(fixedSeconds >= 0 && fixedSeconds <= seconds)) {
    throw new RangeError(`invalid part that no goal ends: ${fixedSeconds} s (expected 0 to ${seconds})`);
  }
}

function exhaustive(event: never): never {
  throw new TypeError(`unknown event: ${JSON.stringify(event)}`);
}
