import type { Crosse, Hand } from '../people/athlete.ts';
import type { Skills } from '../people/skills.ts';
import { bestAssignment } from './best-assignment.ts';
import type { Spot, SpotId } from './play.ts';

/** A man who could fill a spot. */
export interface Candidate {
  /** His own id, distinct among the candidates. */
  readonly id: string;
  readonly hand: Hand;
  readonly crosse: Crosse;
  readonly skills: Skills;
}

/** One man at one spot, and why he is there. */
export interface SpotFit {
  readonly spot: SpotId;
  readonly candidate: string;
  /** What he is worth there: his skills weighed by the spot's needs, less the price of a wrong hand or crosse. */
  readonly fit: number;
  /** Put there by the coach rather than chosen. */
  readonly pinned: boolean;
  /** Short plain phrases, the strongest first: "feeds 5 of 5", "left hand inside". */
  readonly reasons: readonly string[];
}

export type Assignment =
  | { readonly kind: 'assigned'; readonly fits: readonly SpotFit[]; readonly total: number }
  /** Fewer men than spots; `missing` is how many more are needed. */
  | { readonly kind: 'short'; readonly missing: number };

/** What the coach fixed beforehand: spot to candidate id. Unknown ids and spots are not allowed. */
export type Pins = ReadonlyMap<SpotId, string>;

/**
 * Weights of what a man is worth at a spot, in skill steps (ours; common practice, no source for the sizes).
 * A wrong hand costs what 1.5 steps of each hand-bound skill are worth, so a much better righty still beats a weak lefty.
 */
export const assignmentWeights = {
  wrongHand: 1.5,
  /** A pole handles and shoots like a man one and a half steps worse at everything. */
  pole: 1.5,
  /** Every man runs, catches and passes, wherever he stands: what the mean of the three is worth at each spot. */
  everywhere: 1,
} as const;

/**
 * The best six for the spots: exact, by worth of skill and hand over all ways to place the men.
 *
 * Goalkeepers are left out. Pinned men stay where the coach put them. Throws RangeError when a pin names a spot or
 * a man that is not there, or one man twice.
 */
export function assignSpots(
  spots: readonly Spot[],
  candidates: readonly Candidate[],
  pins: Pins = new Map(),
): Assignment {
  const men = candidates.filter((candidate) => candidate.crosse !== 'goalkeeper');
  checkPins(spots, men, pins);
  if (men.length < spots.length) return { kind: 'short', missing: spots.length - men.length };
  const pinnedMen = new Set(pins.values());
  const openSpots = spots.filter((spot) => !pins.has(spot.id));
  const freeMen = men.filter((man) => !pinnedMen.has(man.id));
  const worth = openSpots.flatMap((spot) => freeMen.map((man) => fitAt(spot, man)));
  const chosen = bestAssignment(worth, openSpots.length, freeMen.length);
  const fits = spots.map((spot) => {
    const pin = pins.get(spot.id);
    const man = pin === undefined ? freeMen[chosen[openSpots.indexOf(spot)]!]! : men.find((each) => each.id === pin)!;
    return {
      spot: spot.id,
      candidate: man.id,
      fit: fitAt(spot, man),
      pinned: pin !== undefined,
      reasons: reasonsAt(spot, man),
    };
  });
  return { kind: 'assigned', fits, total: fits.reduce((sum, fit) => sum + fit.fit, 0) };
}

/** What changes when one of the six is missing. */
export interface Replacement {
  readonly missing: string;
  /** Who comes in from the bench; null when nobody is left. */
  readonly comesIn: string | null;
  /** Everybody who stands somewhere else than before, the new man with `from` null. */
  readonly moves: readonly { readonly candidate: string; readonly from: SpotId | null; readonly to: SpotId }[];
  /** How much worth is lost; null when six cannot be placed. */
  readonly loss: number | null;
}

/** For each man of the best six: who replaces him, who shifts, and what is lost. Order of the spots. */
export function replacements(
  spots: readonly Spot[],
  candidates: readonly Candidate[],
  pins: Pins = new Map(),
): readonly Replacement[] {
  const best = assignSpots(spots, candidates, pins);
  if (best.kind === 'short') return [];
  const spotBefore = new Map(best.fits.map((fit) => [fit.candidate, fit.spot]));
  return best.fits.map(({ candidate: missing }) => {
    const others = candidates.filter((candidate) => candidate.id !== missing);
    const pinsLeft = new Map([...pins].filter(([, id]) => id !== missing));
    const without = assignSpots(spots, others, pinsLeft);
    if (without.kind === 'short') return { missing, comesIn: null, moves: [], loss: null };
    const moves = without.fits
      .filter((fit) => spotBefore.get(fit.candidate) !== fit.spot)
      .map((fit) => ({ candidate: fit.candidate, from: spotBefore.get(fit.candidate) ?? null, to: fit.spot }));
    const comesIn = moves.find((move) => move.from === null)?.candidate ?? null;
    return { missing, comesIn, moves, loss: best.total - without.total };
  });
}

/** What a man is worth at a spot; higher is better. Skills count from the middle grade, so a usual man is worth 0 wherever his hand is right. */
export function fitAt(spot: Spot, man: Candidate): number {
  const { needs } = spot;
  const crosse = man.crosse === 'pole' ? assignmentWeights.pole : 0;
  let worth = 0;
  for (const skill of everywhereSkills) {
    worth += (assignmentWeights.everywhere * (man.skills[skill] - usualSkill)) / everywhereSkills.length;
  }
  for (const skill of skillNames) worth += needs[skill] * (man.skills[skill] - usualSkill - crosse);
  // A hand matters where he shoots, feeds or handles; inside he finishes with either.
  if (isWrongHand(spot, man)) worth -= assignmentWeights.wrongHand * (needs.shoot + needs.feed);
  return worth;
}

const skillNames = ['feed', 'shoot', 'inside', 'handle'] as const;
const everywhereSkills = ['speed', 'catch', 'pass'] as const;
const usualSkill = 3;
const skillVerbs = { feed: 'feeds', shoot: 'shoots', inside: 'finishes inside', handle: 'handles' } as const;

function isWrongHand(spot: Spot, man: Candidate): boolean {
  return spot.hand !== 'either' && man.hand !== 'both' && man.hand !== spot.hand;
}

function reasonsAt(spot: Spot, man: Candidate): readonly string[] {
  const skills = skillNames
    .filter((skill) => spot.needs[skill] > 0)
    .sort((one, other) => spot.needs[other] - spot.needs[one])
    .map((skill) => `${skillVerbs[skill]} ${gradeText(man.skills[skill])} of 5`);
  return [...skills, ...handReasons(spot, man), ...(man.crosse === 'pole' ? ['with a pole'] : [])];
}

/** To a tenth, and no further than the scale goes: a man from an older level is simply the best of this one. */
function gradeText(grade: number): number {
  return Math.round(Math.min(5, Math.max(1, grade)) * 10) / 10;
}

function handReasons(spot: Spot, man: Candidate): readonly string[] {
  if (spot.hand === 'either') return [];
  if (man.hand === 'both') return ['either hand inside'];
  return [isWrongHand(spot, man) ? `${man.hand} hand outside` : `${man.hand} hand inside`];
}

function checkPins(spots: readonly Spot[], men: readonly Candidate[], pins: Pins): void {
  const seen = new Set<string>();
  for (const [spot, id] of pins) {
    if (!spots.some((each) => each.id === spot))
      throw new RangeError(`unknown spot: ${spot} (expected ${spots.map((each) => each.id).join(', ')})`);
    if (!men.some((each) => each.id === id)) throw new RangeError(`unknown candidate: ${id} at ${spot}`);
    if (seen.has(id)) throw new RangeError(`invalid pins: ${id} stands at two spots`);
    seen.add(id);
  }
}
