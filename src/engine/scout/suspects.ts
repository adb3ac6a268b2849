import { type DisciplineName, disciplines } from '../defense/discipline.ts';
import type { Scheme } from '../defense/scheme.ts';
import type { Level } from '../people/athlete.ts';
import type { Suspect } from './rehearsal.ts';
import { disciplineShares } from './scheme-prior.ts';

/** A scheme in question, and how likely it is before anything is seen. */
export interface SchemeInQuestion {
  readonly scheme: Scheme;
  /** Beside the others; 0 for one that is ruled out. */
  readonly weight: number;
  /** How likely each of the six is to be the man whom it shuts off, beside the others; all alike when absent. For a scheme that shuts off nobody it counts nothing. */
  readonly weight_byStar?: readonly number[];
  /** How well they are said to play it; as is usual at the level when absent. */
  readonly discipline?: DisciplineName;
}

/** A suspect, with his part of the likelihood of his scheme. */
export interface WeighedSuspect extends Suspect {
  /** Number of his scheme among those in question. */
  readonly of: number;
  readonly disciplineName: DisciplineName;
  /** All suspects of one scheme add up to 1. */
  readonly share: number;
}

/**
 * Every way in which one of the schemes may be played: by each discipline that is usual at the level or was said of them, and a shutoff on each of the six. What is not asked (how well,
 * on whom) is summed over in the end.
 */
export function suspectsOf(questions: readonly SchemeInQuestion[], level: Level): readonly WeighedSuspect[] {
  return questions.flatMap(({ scheme, weight_byStar, discipline }, of) =>
    starsOf(scheme, weight_byStar).flatMap(({ star, share }) =>
      disciplineShares(level, discipline).map(({ name, share: part }) => ({
        scheme,
        discipline: disciplines[name],
        star,
        of,
        disciplineName: name,
        share: share * part,
      })),
    ),
  );
}

function starsOf(
  scheme: Scheme,
  weight_byStar: readonly number[] | undefined,
): readonly { readonly star: number; readonly share: number }[] {
  if (scheme.locksStar !== true) return [{ star: -1, share: 1 }];
  const weights = weight_byStar ?? [1, 1, 1, 1, 1, 1];
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  if (weights.length !== 6 || !(all > 0) || weights.some((weight) => !(weight >= 0)))
    throw new RangeError(`invalid weights of who is shut off: ${weights.join(' ')} (expected six, 0 or more)`);
  return weights.flatMap((weight, star) => (weight > 0 ? [{ star, share: weight / all }] : []));
}
