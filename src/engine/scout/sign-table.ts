import type { Level } from '../people/athlete.ts';
import type { Movement, MovementId } from './movement.ts';
import { createRehearsal, type Suspect } from './rehearsal.ts';
import { type SignId, signs } from './signs.ts';
import type { WeighedSuspect } from './suspects.ts';
import { pathOfMovement, walkLap } from './walked-lap.ts';

/** One movement walked through by every suspect: which signs were there in which take. Plain data, so that it can be kept and sent as JSON. */
export interface WalkedMovement {
  readonly movement: MovementId;
  readonly takes: number;
  /** Signs that it can show, */
  readonly signs: readonly SignId[];
  /** and for each of them and each suspect, in their order, a 1 for every take in which it was there. */
  readonly seen_bySign: readonly (readonly (readonly number[])[])[];
}

/** What signs say: for one set and one list of suspects. */
export interface SignTable {
  readonly movements: readonly WalkedMovement[];
  /** The suspects' names, so that a table is not taken for that of others. */
  readonly suspects: readonly string[];
}

/** A sign that somebody says he saw, or did not see. */
export interface Tick {
  readonly sign: SignId;
  readonly seen: boolean;
  /** The movement in which; the first that shows it when absent. */
  readonly movement?: MovementId;
}

/** How often whoever looks from the bench is mistaken, either way (common practice, no source). Share. */
export const usualMistaken = 0.1;

export interface WalkChoice {
  readonly level: Level;
  readonly takes: number;
  readonly seed: number;
}

/** Enough for odds within about .1 of a scheme's (its suspects together). */
export const defaultWalkChoice: Omit<WalkChoice, 'level'> = { takes: 12, seed: 20_261 };

/** Walk every suspect through a movement: up to a second of work. The same choice gives the same answer. */
export function walkMovement(movement: Movement, suspects: readonly Suspect[], choice: WalkChoice): WalkedMovement {
  const path = pathOfMovement(movement);
  const laps = suspects.map((suspect) => {
    const rehearsal = createRehearsal(suspect, { ...choice, sense: 1 });
    return Array.from({ length: choice.takes }, (_, take) => walkLap(rehearsal, movement, path, take));
  });
  const shown = signs.filter((sign) => {
    const lap = laps[0]?.[0];
    return sign.shownBy.includes(movement.id) && lap !== undefined && sign.sees(lap, movement) !== null;
  });
  return {
    movement: movement.id,
    takes: choice.takes,
    signs: shown.map(({ id }) => id),
    seen_bySign: shown.map((sign) =>
      laps.map((takes) => takes.map((lap) => (sign.sees(lap, movement) === true ? 1 : 0))),
    ),
  };
}

/** Put walked movements together, for the suspects that walked them. */
export function signTableOf(movements: readonly WalkedMovement[], suspects: readonly Suspect[]): SignTable {
  return { movements, suspects: suspects.map(suspectName) };
}

/** The signs that a table can say something of. */
export function signsOf({ movements }: SignTable): readonly SignId[] {
  return signs.map(({ id }) => id).filter((id) => movements.some((walked) => walked.signs.includes(id)));
}

/**
 * The logarithm of how likely these ticks are against a suspect. Ticks of one movement are weighed together, take by take, so that two that say the same are not counted twice; each may be mistaken.
 * A tick that the table knows nothing of says nothing. RangeError for a suspect that the table was not made for.
 */
export function logOddsOfTicks(
  table: SignTable,
  suspect: Suspect,
  ticks: readonly Tick[],
  mistaken = usualMistaken,
): number {
  const at = table.suspects.indexOf(suspectName(suspect));
  if (at < 0) throw new RangeError(`unknown suspect: ${suspectName(suspect)} (the table of signs was made for others)`);
  return table.movements.reduce((sum, walked) => {
    const here = ticks.flatMap((tick) => {
      const sign = walked.signs.indexOf(tick.sign);
      return sign >= 0 && movementOf(table, tick) === walked.movement ? [{ sign, seen: tick.seen }] : [];
    });
    if (here.length === 0) return sum;
    let odds = 0;
    for (let take = 0; take < walked.takes; take++) {
      let all = 1;
      for (const { sign, seen } of here) {
        const isThere = walked.seen_bySign[sign]![at]![take] === 1;
        all *= isThere === seen ? 1 - mistaken : mistaken;
      }
      odds += all;
    }
    return sum + Math.log(odds / walked.takes);
  }, 0);
}

function movementOf({ movements }: SignTable, { sign, movement }: Tick): MovementId | undefined {
  if (movement !== undefined) return movement;
  const order = signs.find(({ id }) => id === sign)?.shownBy ?? [];
  return order.find((id) => movements.some((walked) => walked.movement === id && walked.signs.includes(sign)));
}

/** How often a sign is there against each scheme in a movement, 0 to 1, `mistaken` eyes included; in the order of the schemes in question. */
export function oddsOfSign(
  walked: WalkedMovement,
  sign: SignId,
  suspects: readonly WeighedSuspect[],
  schemes: number,
  mistaken = usualMistaken,
): readonly number[] {
  const seen = walked.seen_bySign[walked.signs.indexOf(sign)];
  if (seen === undefined) throw new RangeError(`unknown sign: ${sign} (expected ${walked.signs.join(', ')})`);
  return Array.from({ length: schemes }, (_, of) => {
    const there = suspects.reduce((sum, suspect, at) => {
      if (suspect.of !== of) return sum;
      const takes = seen[at]!.reduce((count, one) => count + one, 0);
      return sum + (suspect.share * takes) / walked.takes;
    }, 0);
    return mistaken + (1 - 2 * mistaken) * there;
  });
}

function suspectName({ scheme, discipline, star }: Suspect): string {
  return [scheme.id, star, ...Object.values(discipline)].join(' ');
}
