import { worthOfInformation } from '../reads/worth-of-information.ts';
import type { Movement, MovementId } from './movement.ts';
import { oddsOfSign, type SignTable } from './sign-table.ts';
import type { SignId } from './signs.ts';
import type { WeighedSuspect } from './suspects.ts';

/** What may be called, and what each call makes against each scheme. */
export interface CallsAgainst {
  /** How likely each scheme is now; all together more than nothing. */
  readonly share_byScheme: readonly number[];
  /** Goals a chance. */
  readonly goals_byCallScheme: readonly (readonly number[])[];
}

/** What it is worth to run a movement first, with one sign watched for. */
export interface MovementWorth {
  readonly movement: MovementId;
  readonly passes: number;
  /** How long it lasts, s. */
  readonly seconds: number;
  readonly watch: SignId;
  /** Goals a chance more than without, when the best is called after either answer; 0 or more. */
  readonly gain: number;
  /** How much of the doubt it takes away, bits. */
  readonly bits: number;
  /** How likely the sign is to be seen. */
  readonly seen: number;
  /** Numbers of the calls: when it is seen, and when it is not. */
  readonly callIfSeen: number;
  readonly callIfNot: number;
  /** How often it is there against each scheme. */
  readonly odds_byScheme: readonly number[];
}

export interface ProbeAdvice {
  /** The call without a probe, and what it makes. */
  readonly without: { readonly call: number; readonly goals: number };
  /** What it would be worth to know the scheme for certain: no probe can be worth more. */
  readonly mostGain: number;
  /** What is worth most first; of the same worth what takes less time. One line a movement, with the sign that is worth most in it. */
  readonly movements: readonly MovementWorth[];
}

/** Worths that differ by less than this are the same to anybody. Goals a chance. */
const same = 5e-4;

/**
 * Which movement is worth running to find out what the defense plays, by what it changes: the expected value of sample information of its best sign, mistaken eyes
 * included. A sign that tells much may be worth nothing, when the same is called either way. What the movement itself costs or opens is not in it.
 */
export function worthOfMovements(
  table: SignTable,
  movements: readonly Movement[],
  suspects: readonly WeighedSuspect[],
  { share_byScheme, goals_byCallScheme }: CallsAgainst,
): ProbeAdvice {
  const choice = { weight_byScheme: share_byScheme, goals_byCallScheme };
  const never = worthOfInformation(choice, [share_byScheme.map(() => 1)]);
  const worths = movements.flatMap((movement): readonly MovementWorth[] => {
    const walked = table.movements.find((one) => one.movement === movement.id);
    const each = (walked?.signs ?? []).map((watch): MovementWorth => {
      const odds = oddsOfSign(walked!, watch, suspects, share_byScheme.length);
      const { gain, bits, byObservation } = worthOfInformation(choice, [odds, odds.map((one) => 1 - one)]);
      const [seen, not] = byObservation;
      return {
        movement: movement.id,
        passes: movement.ball.length - 1,
        seconds: movement.seconds,
        watch,
        gain,
        bits,
        seen: seen!.chance,
        callIfSeen: seen!.best.call,
        callIfNot: not!.best.call,
        odds_byScheme: odds,
      };
    });
    const best = each.sort((one, other) => other.gain - one.gain || other.bits - one.bits)[0];
    return best === undefined ? [] : [best];
  });
  return {
    without: never.without,
    mostGain: never.mostGain,
    movements: worths.sort((one, other) =>
      Math.abs(other.gain - one.gain) > same ? other.gain - one.gain : one.seconds - other.seconds,
    ),
  };
}
