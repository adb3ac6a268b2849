import type { LookReport, PlayReport, SchemeReport } from '../engine/index.ts';
import type { OpponentWhole } from './opponent-whole.ts';

/**
 * What `sliderule test --json` prints: an array with one object a play, keys as documented in docs/cli.md.
 * Numbers are not rounded; an empty interval cannot happen, a missing first shot is `null`.
 */
export function reportsJson(plays: readonly { readonly report: PlayReport; readonly whole?: OpponentWhole }[]): string {
  const objects = plays.map(({ report, whole }) => ({
    ...playJson(report),
    ...(whole && { opponent: wholeJson(whole) }),
  }));
  return `${JSON.stringify(objects, null, 2)}\n`;
}

function wholeJson({ id, shares, goalsPerChance, shotsPerChance, turnoversPerChance }: OpponentWhole): object {
  return { id, shares, goalsPerChance, shotsPerChance, turnoversPerChance };
}

function playJson({ engine, seed, inputHash, play, side, penalty, results }: PlayReport): object {
  return { engine, seed, inputHash, play, side, penalty, results: results.map(schemeJson) };
}

function schemeJson(result: SchemeReport): object {
  const {
    scheme,
    trials,
    goalsPerChance,
    shotsPerChance,
    turnoversPerChance,
    firstShot,
    play,
    watched,
    looks,
    own,
    back,
  } = result;
  return {
    scheme,
    trials,
    goalsPerChance,
    shotsPerChance,
    turnoversPerChance,
    firstShot,
    play,
    watched,
    looks: looks.map(lookJson),
    own,
    back,
  };
}

function lookJson(look: LookReport): object {
  const { kind, from, to, share, opens, closes, completion, shotValue, value, leftBy } = look;
  const { valueLow, valueHigh, replays } = look;
  return { kind, from, to, share, opens, closes, completion, shotValue, value, leftBy, valueLow, valueHigh, replays };
}
