import { type Estimate, wilsonInterval } from '../../engine/index.ts';
import type { Chance } from '../../playbook/index.ts';

/** The man-ups in which some chances were: a team is a man up as long as a penalty is served, and has one chance in that time or several. */
export interface ManUpNumbers {
  readonly manUps: number;
  /** Those that brought a goal, or more than one. */
  readonly scored: number;
  /** Man-ups with a goal as a share, Wilson's interval, 95 %. */
  readonly raw: Estimate;
  /** Chances of which it is not known when they were, so that each counts as a man-up of its own. */
  readonly alone: number;
}

export function countManUps(chances: readonly Chance[]): ManUpNumbers {
  const manUps = manUpsOf(chances);
  const scored = manUps.filter((those) => those.some(({ result }) => result === 'goal')).length;
  return {
    manUps: manUps.length,
    scored,
    raw: wilsonInterval(scored, manUps.length),
    alone: chances.filter((chance) => !isTimed(chance) && chance.start !== 'transition').length,
  };
}

/**
 * Chances by the man-up in which they were: each is in exactly one. A chance goes on in the man-up of the one before it (of the same side, day, opponent and game) when it began within the time of that
 * penalty and no goal had ended it: on the run as the bench writes it, or with nothing said of how it began. A restart is a new penalty, but for the one that follows a flag.
 */
export function manUpsOf(chances: readonly Chance[]): readonly (readonly Chance[])[] {
  const found: ManUp[] = [];
  for (const game of gamesOf(chances)) {
    let last: ManUp | undefined;
    for (const chance of game) {
      if (last !== undefined && goesOn(last, chance)) {
        const isFlagged = last.from.start === 'flagDown';
        last.chances.push(chance);
        // The penalty runs from the whistle, not from the flag.
        if (isFlagged) last.from = chance;
      } else {
        last = { from: chance, chances: [chance] };
        found.push(last);
      }
    }
  }
  return found.map((manUp) => manUp.chances);
}

interface ManUp {
  /** The chance with which its penalty began. */
  from: Chance;
  readonly chances: Chance[];
}

/** Chances of one side in one game, in the order in which they were played; those without a time in the order in which they were written, behind the others. */
function gamesOf(chances: readonly Chance[]): readonly (readonly Chance[])[] {
  const games = new Map<string, Chance[]>();
  for (const chance of chances) {
    const { side, date, opponent, game } = chance;
    const key = JSON.stringify([side, date, opponent, game]);
    const known = games.get(key);
    if (known === undefined) games.set(key, [chance]);
    else known.push(chance);
  }
  return [...games.values()].map((played) => [
    ...played.filter(isTimed).sort((one, other) => one.period! - other.period! || other.clock! - one.clock!),
    ...played.filter((chance) => !isTimed(chance)),
  ]);
}

function isTimed({ date, period, clock }: Chance): boolean {
  return date !== undefined && period !== undefined && clock !== undefined;
}

/** A penalty of which no length is written down, s: the usual one of a personal foul. */
const usualPenalty = 60;

/** Times on the clock are written in whole seconds, and each may be one off. */
const slack = 2;

/** As long as a flag stays down before the whistle, s of play (an assumption: longer possessions are rare). */
const longestFlag = 60;

function goesOn({ from, chances }: ManUp, chance: Chance): boolean {
  const before = chances.at(-1)!;
  if (chance.start === 'flagDown') return false;
  const passed = secondsBetween(from, chance);
  if (before.start === 'flagDown' && chance.start !== 'transition')
    return passed !== undefined && passed <= longestFlag;
  if (chance.start === 'restart' || isReleased(before)) return false;
  if (chance.start === 'transition')
    return isTimed(from) === isTimed(chance) && (passed === undefined || passed <= lengthOf(from) + slack);
  if (before.result === 'expired' || before.result === 'newFlag' || from.period !== chance.period) return false;
  return passed !== undefined && passed <= lengthOf(from) + slack;
}

function lengthOf({ penalty }: Chance): number {
  return penalty?.seconds ?? usualPenalty;
}

/** A goal brings the man back, unless the penalty stays or another man serves too. */
function isReleased({ result, penalty }: Chance): boolean {
  return result === 'goal' && penalty?.fixed !== true && (penalty?.men ?? 1) === 1;
}

/** Seconds of play from one chance to a later one, at the least; undefined where the two have no times. */
function secondsBetween(one: Chance, other: Chance): number | undefined {
  if (!isTimed(one) || !isTimed(other)) return undefined;
  if (one.period === other.period) return one.clock! - other.clock!;
  // How long a period is, no chance says: what was left of the first has passed for sure, and only the next can hold the rest of a penalty.
  return other.period! === one.period! + 1 ? one.clock! : Number.POSITIVE_INFINITY;
}
