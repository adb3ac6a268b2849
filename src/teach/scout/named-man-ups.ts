import { type SchemeBelief, sharePosterior } from '../../engine/index.ts';
import { unwritten } from './expected-schemes.ts';
import { beliefStrength } from './schemes-before.ts';
import type { ScoutedScheme } from './scout-question.ts';

type Counts = Readonly<Record<string, number>>;

/**
 * The schemes with the weights that they had before man-ups were counted by their names (`counted`): a Dirichlet's counts taken back. None falls below what an entry is
 * not trusted with: a scheme that was named is never ruled out by that.
 */
export function withoutNamed(schemes: readonly ScoutedScheme[], counted: Counts): readonly ScoutedScheme[] {
  const named = namedAmong(schemes, counted);
  const times = sumOf(named);
  if (times === 0) return schemes;
  const all = schemes.reduce((sum, { weight }) => sum + weight, 0);
  const each = all / (beliefStrength + times);
  return schemes.map((scheme) => {
    const { id, weight } = scheme;
    return { ...scheme, weight: Math.max(unwritten * weight, weight - (named[id] ?? 0) * each) };
  });
}

/**
 * What marks say, with the man-ups that were counted by their names on top, just as the season counts them. `belief` is of the schemes `withoutNamed`. Weighed
 * with the prior, a named man-up could lower the scheme that it names: what was likely before makes it less telling that all marked man-ups are alike.
 */
export function withNamed(belief: SchemeBelief, schemes: readonly ScoutedScheme[], counted: Counts): SchemeBelief {
  const named = namedAmong(schemes, counted);
  if (sumOf(named) === 0) return belief;
  const all = schemes.reduce((sum, { weight }) => sum + weight, 0);
  const marked = Object.fromEntries(belief.schemes.map(({ scheme, share }) => [scheme, share]));
  const shares = sharePosterior(marked, beliefStrength, named);
  return {
    ...belief,
    schemes: belief.schemes.map((one, at) => ({
      ...one,
      before: schemes[at]!.weight / all,
      share: shares[one.scheme] ?? 0,
    })),
  };
}

function namedAmong(schemes: readonly ScoutedScheme[], counted: Counts): Counts {
  return Object.fromEntries(schemes.map(({ id }) => [id, Object.hasOwn(counted, id) ? counted[id]! : 0]));
}

function sumOf(counts: Counts): number {
  return Object.values(counts).reduce((sum, times) => sum + times, 0);
}
