/** What man-ups of one team come to together. */
export interface MixedBelief {
  /** How often each scheme is to be expected in the next man-up, 0 to 1; adds up to 1. */
  readonly share_byScheme: readonly number[];
  /** How likely it is that they play one scheme throughout, 0 to 1. */
  readonly oneScheme: number;
}

/** How likely a team is to play one scheme throughout before any man-up is seen: as likely as not, because nobody counted it (assumption). */
export const usuallyOne = 1 / 2;
/** As many man-ups as what was believed before weighs when a team mixes: as on the bench (assumption). */
const priorManUps = 2;
/** Ways to count man-ups by schemes that are kept; those far less likely than the best change no digit that is shown. */
const mostWays = 1000;
const leastWay = 1e-9;

/** So many man-ups of each scheme, and how likely that is beside the other ways. */
interface Way {
  readonly count_byScheme: readonly number[];
  readonly weight: number;
}

/**
 * What a team plays by several man-ups. Either it plays one scheme throughout: then all that was seen is of that one (`together_byScheme`, logarithms of how likely it all
 * is). Or it mixes: each man-up has a scheme of its own (`logs_byManUp`), drawn from a mix that is unknown, Dirichlet with the prior in the place of two man-ups. Which of
 * the two it is, is weighed like all else, so that two man-ups that look unlike each other are not taken for one scheme that looks a little like both.
 *
 * The Dirichlet-multinomial is summed over how many man-ups each scheme may have had (Polya's urn). Shares of `prior_byScheme` add up to 1; one of 0 stays 0.
 */
export function mixOfSchemes(
  prior_byScheme: readonly number[],
  together_byScheme: readonly number[],
  logs_byManUp: readonly (readonly number[])[],
): MixedBelief {
  if (logs_byManUp.length === 0) return { share_byScheme: prior_byScheme, oneScheme: usuallyOne };
  const logs_byScheme = together_byScheme.map((log, at) => log + Math.log(prior_byScheme[at]!));
  const logOne = logOfSum(logs_byScheme);
  const mixed = drawnFromMix(prior_byScheme, logs_byManUp);
  const oneScheme = 1 / (1 + ((1 - usuallyOne) / usuallyOne) * Math.exp(mixed.log - logOne));
  const share_byScheme = logs_byScheme.map(
    (log, at) => oneScheme * Math.exp(log - logOne) + (1 - oneScheme) * mixed.next_byScheme[at]!,
  );
  return { share_byScheme, oneScheme };
}

/** The logarithm of how likely all man-ups are when each is drawn from the mix, and what the next one is then. */
function drawnFromMix(prior_byScheme: readonly number[], logs_byManUp: readonly (readonly number[])[]) {
  let log = 0;
  let ways: readonly Way[] = [{ count_byScheme: prior_byScheme.map(() => 0), weight: 1 }];
  for (const [before, logs] of logs_byManUp.entries()) {
    const top = Math.max(...logs.filter((_, at) => prior_byScheme[at]! > 0));
    const odds = logs.map((one) => Math.exp(one - top));
    const next = nextWays(ways, before, prior_byScheme, odds);
    const all = next.reduce((sum, { weight }) => sum + weight, 0);
    log += top + Math.log(all);
    ways = next.map((way) => ({ ...way, weight: way.weight / all }));
  }
  const next_byScheme = prior_byScheme.map((_, at) =>
    ways.reduce((sum, way) => sum + way.weight * drawn(way, logs_byManUp.length, prior_byScheme, at), 0),
  );
  return { log, next_byScheme };
}

/** Every way to go on by one man-up, the likeliest kept. */
function nextWays(
  ways: readonly Way[],
  before: number,
  prior_byScheme: readonly number[],
  odds_byScheme: readonly number[],
): readonly Way[] {
  const found = new Map<string, Way>();
  for (const way of ways) {
    for (const [at, odds] of odds_byScheme.entries()) {
      const weight = way.weight * drawn(way, before, prior_byScheme, at) * odds;
      if (!(weight > 0)) continue;
      const count_byScheme = way.count_byScheme.map((count, one) => (one === at ? count + 1 : count));
      const key = count_byScheme.join(' ');
      found.set(key, { count_byScheme, weight: weight + (found.get(key)?.weight ?? 0) });
    }
  }
  const sorted = [...found.values()].sort((one, other) => other.weight - one.weight);
  return sorted.slice(0, mostWays).filter(({ weight }) => weight >= leastWay * sorted[0]!.weight);
}

/** How likely the urn is to give this scheme next, after so many man-ups. */
function drawn({ count_byScheme }: Way, before: number, prior_byScheme: readonly number[], scheme: number): number {
  return (priorManUps * prior_byScheme[scheme]! + count_byScheme[scheme]!) / (priorManUps + before);
}

/** The logarithm of a sum of numbers whose logarithms are given; no overflow. */
export function logOfSum(logs: readonly number[]): number {
  const top = Math.max(...logs);
  return top === Number.NEGATIVE_INFINITY
    ? top
    : top + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - top), 0));
}
