import type { ChanceModel } from '../chance/model.ts';
import { createOptions, type Options } from '../chance/options.ts';
import { advanceTrial, beginTrial } from '../chance/run.ts';
import { ballMode, type ChanceState, phase, stride } from '../chance/state.ts';
import { weighInto } from '../chance/weigh.ts';
import { isAskedFor } from './is-asked-for.ts';
import { type OwnThrow, type OwnThrowSeen, ownMates, ownThrows } from './own-throws.ts';
import { areNeighbours, isFeedPlace } from './pass-style.ts';
import { type Left, whoLeft } from './who-left.ts';
import type { LookKind, LookWindow } from './window.ts';

/** How often the carrier's options are weighed while a look is watched, in steps. */
const watchEvery = 2;
/** A look that is gone for no longer than this is still the same window. Seconds. */
const flicker = 0.25;
/** How much better than going on a look must be, as a share of what a carrier asks before he leaves the play for it: a coach sees more than one man can take. */
const lookShare = 0.5;
/** A look that is there for less than this is nothing that anybody could use. Seconds. */
const shortestLook = 0.25;
/** A script that runs longer than this is not watched further. Seconds. */
const longestScript = 25;

/** One look as long as it is there (or has only just gone), from the first moment at which anybody could have seen it. */
interface Spell {
  readonly from: number;
  readonly to: number;
  /** Since when it has been there, and when it was there last; seconds after the restart. */
  readonly since: number;
  last: number;
  /** What has to be told of it; null until the man who could take it has the ball under control. */
  window: OpenWindow | null;
}

interface OpenWindow {
  readonly opens: number;
  readonly seenAt: number;
  readonly kind: LookKind;
  readonly left: Left;
  completion: number;
  shotOdds: number;
  /** Completion and odds are those of `seenAt`. */
  settled: boolean;
}

/** Told what was weighed at a watched moment, for the man who has the ball or to whom it is on its way. */
export type MomentKeeper = (state: ChanceState, hand: number, options: Options) => void;

/** One trial while it is watched. */
interface Watch {
  readonly model: ChanceModel;
  readonly state: ChanceState;
  readonly options: Options;
  readonly spells: Map<number, Spell>;
  readonly windows: LookWindow[];
  /** The play's own passes, their receivers by carrier, and what became of those that this trial came to. */
  readonly throws: readonly OwnThrow[];
  readonly mates_byCarrier: Uint8Array;
  readonly seen_byThrow: Map<number, OwnThrowSeen>;
  /** Keeps all that is weighed, which is then every mate; null when nobody wants to see it. */
  readonly keep: MomentKeeper | null;
  /** When the script's first beat started; NaN before. Kept here, because the last ten seconds start a script anew. */
  began: number;
  /** `heldSince` of the last possession in which the holder could act: at its first moment his pass may already be on its way. */
  possession: number;
  /** When the wind-up began that ends the present possession; Infinity while there is none. */
  thrownAt: number;
}

/** What was seen in some watched trials, in their order. Plain data. */
export interface WatchedPlay {
  /** The play's own passes, and what became of each in the trials that came to it. */
  readonly throws: readonly OwnThrow[];
  readonly seen: readonly OwnThrowSeen[];
  readonly windows: readonly LookWindow[];
}

/**
 * Watch trials `from` (included) to `to` (excluded): the script runs by itself, nobody takes an opening, and every look that
 * is truly there (not only the ones a carrier would notice) is kept as a window. Stops each trial where its script ends.
 * `keep` is told of every watched moment, and changes nothing of what is seen.
 */
export function watchPlay(
  model: ChanceModel,
  state: ChanceState,
  from: number,
  to: number,
  keep: MomentKeeper | null = null,
): WatchedPlay {
  const windows: LookWindow[] = [];
  const seen: OwnThrowSeen[] = [];
  const throws = ownThrows(model.program.script);
  const mates_byCarrier = ownMates(throws);
  const options = createOptions();
  for (let trial = from; trial < to; trial++) {
    const began = Number.NaN;
    const fresh = { spells: new Map(), seen_byThrow: new Map(), began, possession: began, thrownAt: began };
    const watch: Watch = { model, state, options, windows, throws, mates_byCarrier, keep, ...fresh };
    watchTrial(watch, trial);
    seen.push(...watch.seen_byThrow.values());
  }
  return { throws, seen, windows };
}

/** The windows alone. */
export function watchLooks(model: ChanceModel, state: ChanceState, from: number, to: number): LookWindow[] {
  return [...watchPlay(model, state, from, to).windows];
}

function watchTrial(watch: Watch, trial: number): void {
  const { model, state } = watch;
  beginTrial(model, state, trial);
  state.watching = true;
  while (state.end === null && !scriptIsOver(watch)) {
    advanceTrial(model, state);
    followBall(watch);
    if (!(watch.began >= 0)) watch.began = state.scriptSince;
    if (state.step % watchEvery === 0 && watch.began >= 0) watchMoment(watch);
  }
  for (const spell of watch.spells.values()) closeSpell(watch, spell);
}

/** A wind-up begins at the step that it is first seen at: nobody can take another look from then on. */
function followBall(watch: Watch): void {
  const { ball, time } = watch.state;
  const isThrowing = ball.mode === ballMode.windUp || ball.mode === ballMode.shotWindUp;
  if (!isThrowing) watch.thrownAt = Number.POSITIVE_INFINITY;
  else if (watch.thrownAt === Number.POSITIVE_INFINITY) watch.thrownAt = time;
}

function scriptIsOver({ state, began }: Watch): boolean {
  if (!(began >= 0)) return false;
  return state.unit.phase !== phase.script || state.time > began + longestScript;
}

function watchMoment(watch: Watch): void {
  const { model, state, options, spells } = watch;
  const hand = handOf(state);
  if (hand >= 0) {
    weighInto(
      options,
      model,
      state,
      hand,
      state.bodies.motion,
      watch.keep === null ? unsettledMates(spells, hand) | watch.mates_byCarrier[hand] : everyMate,
      lookShare * model.parameters.playMargin,
    );
    watch.keep?.(state, hand, options);
    const canAct = canActNow(watch);
    for (let to = 0; to < 6; to++) watchLook(watch, hand, to, canAct);
    // What replaces the script in the last ten seconds is another play.
    if (!state.lastTen) watchThrows(watch, hand, canAct);
  }
  for (const [key, spell] of spells) {
    if (!hasGone(state, spell, hand)) continue;
    closeSpell(watch, spell);
    spells.delete(key);
  }
}

const everyMate = 0b111111;

/** The mates (bit i for mate i) to whom a look has opened that the carrier can't have seen yet: they are weighed even when it has gone. */
function unsettledMates(spells: ReadonlyMap<number, Spell>, hand: number): number {
  let mates = 0;
  for (const { from, to, window } of spells.values()) {
    if (from === hand && window !== null && !window.settled) mates |= 1 << to;
  }
  return mates;
}

/** The attacker who has the ball until it leaves his stick, or to whom it is on its way; -1 for nobody. */
function handOf({ ball }: ChanceState): number {
  switch (ball.mode) {
    case ballMode.held:
    case ballMode.windUp:
    case ballMode.shotWindUp:
      return ball.holder < 6 ? ball.holder : -1;
    case ballMode.pass:
      return ball.to;
    default:
      return -1;
  }
}

/**
 * Whether the holder can throw or shoot. A wind-up is too late, but for the first moment of a possession: he threw at once, and could
 * have thrown elsewhere.
 */
function canActNow(watch: Watch): boolean {
  const { ball, time } = watch.state;
  if (ball.mode === ballMode.pass || time < ball.readyAt) return false;
  const isFirst = watch.possession !== ball.heldSince;
  watch.possession = ball.heldSince;
  return isFirst || ball.mode === ballMode.held;
}

function watchLook(watch: Watch, from: number, to: number, canAct: boolean): void {
  const { model, state, options, spells } = watch;
  const key = from * 6 + to;
  const isThere = from === to ? isShot(model, options) : isLook(model, options, to);
  let spell = spells.get(key);
  if (spell === undefined) {
    if (!isThere) return;
    spell = { from, to, since: state.time, last: state.time, window: null };
    spells.set(key, spell);
  }
  if (isThere) spell.last = state.time;
  if (spell.window === null && isThere && canAct) spell.window = openWindow(watch, spell);
  if (spell.window !== null && !spell.window.settled) settle(watch, spell.window, from, to);
}

function watchThrows({ model, state, options, throws, seen_byThrow }: Watch, hand: number, canAct: boolean): void {
  for (const [own, asked] of throws.entries()) {
    if (asked.from !== hand || !isAskedFor(state, asked, canAct)) continue;
    const before = seen_byThrow.get(own);
    seen_byThrow.set(own, {
      trial: state.trial,
      own,
      opened: before?.opened === true || isLook(model, options, asked.to),
      completion: Math.max(before?.completion ?? 0, options.completion_byMate[asked.to]!),
    });
  }
}

function openWindow(watch: Watch, { from, to, since }: Spell): OpenWindow {
  const { model, state } = watch;
  return {
    opens: state.time - watch.began,
    // What was there while the ball was on its way to him he has seen by the time he can throw.
    seenAt: Math.max(state.ball.readyAt, since + model.reaction_byAgent[from]),
    kind: kindOf(state, from, to),
    left: whoLeft(model, state, from, to),
    completion: 0,
    shotOdds: 0,
    settled: false,
  };
}

/** Until the carrier can have seen it, what counts is what it has become, not what it was. By then he may have thrown elsewhere. */
function settle({ state, options, thrownAt }: Watch, window: OpenWindow, from: number, to: number): void {
  window.completion = from === to ? 1 : options.completion_byMate[to];
  window.shotOdds = from === to ? options.shotOdds : options.shotOdds_byMate[to];
  window.settled = state.time >= window.seenAt && thrownAt >= window.seenAt;
}

function hasGone(state: ChanceState, spell: Spell, hand: number): boolean {
  if (state.time - spell.last <= flicker) return false;
  return hand !== spell.from || spell.window === null || spell.window.settled;
}

/** A look that the carrier could not have seen before the ball left his stick has no pass to complete. */
function closeSpell({ state, began, windows }: Watch, { from, to, since, last, window }: Spell): void {
  if (window === null || last - since < shortestLook) return;
  const { opens, seenAt, kind, left, shotOdds, settled } = window;
  windows.push({
    trial: state.trial,
    kind,
    from,
    to,
    opens,
    closes: Math.max(opens, last - began),
    seenAt,
    completion: settled ? window.completion : 0,
    shotOdds,
    leftBy: left.leftBy,
    duty: left.duty,
    lateBy: left.lateBy,
  });
}

/** A look has to be better than going on, by as much as a carrier wants before he leaves the script for it. */
function floorOf(model: ChanceModel, options: Options): number {
  return options.holdValue + lookShare * model.parameters.playMargin;
}

function isShot(model: ChanceModel, options: Options): boolean {
  return options.shotOdds > 0 && options.shotValue > floorOf(model, options);
}

function isLook(model: ChanceModel, options: Options, mate: number): boolean {
  return (
    options.shotOdds_byMate[mate] > 0 &&
    options.value_byMate[mate] > floorOf(model, options) &&
    options.completion_byMate[mate] >= model.parameters.openFloor * model.passNorm
  );
}

function kindOf(state: ChanceState, from: number, to: number): LookKind {
  if (from === to) return 'shot';
  const { motion } = state.bodies;
  if (isFeedPlace(motion[stride * to], motion[stride * to + 1])) return 'feed';
  const { ring, ringSize } = state.coverage.view;
  return areNeighbours(ring, ringSize, from, to) ? 'pass' : 'skip';
}
