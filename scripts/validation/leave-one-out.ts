import type { SchemeChances } from '../../src/engine/index.ts';

/** One scheme kept out of what is learnt. */
export interface LeftOut {
  readonly scheme: string;
  /** What the others taught. */
  readonly unmet: readonly SchemeChances[];
  /** Chances against it, to measure in. */
  readonly held: readonly SchemeChances[];
}

/** Leaves each scheme out of what is learnt in turn; what is held of it is what that is measured in. */
export function leaveEachOut(learn: readonly SchemeChances[], held: readonly SchemeChances[]): readonly LeftOut[] {
  return learn.map(({ scheme }) => ({
    scheme,
    unmet: learn.filter((one) => one.scheme !== scheme),
    held: held.filter((one) => one.scheme === scheme),
  }));
}

/**
 * All schemes with so many fewer man-ups of each that they are together no more than what is left when one scheme is left out: so to have met
 * them all is not to have learnt from more. The man-ups of a scheme are numbered in a row from `first`.
 */
export function asManyOfAll(learn: readonly SchemeChances[], first: number): readonly SchemeChances[] {
  return learn.map((one) => {
    const trials = Math.floor((one.trials * (learn.length - 1)) / learn.length);
    return { ...one, trials, chances: one.chances.filter(({ trial }) => trial < first + trials) };
  });
}
