import { engineVersion } from '../engine/index.ts';
import type { PracticeEffort, PractisingMan, SkillWorth, SkillWorths } from '../worker/index.ts';
import type { ReadsConditions } from './reads-json.ts';

/** What a better skill is worth, for other programs. Goals a chance with 95 % intervals; the order of the keys is the contract. */
export function skillsJson(
  { unit, each }: SkillWorths,
  play: string,
  men: readonly PractisingMan[],
  effort: PracticeEffort,
  { seed, hash, penalty, level }: ReadsConditions,
): string {
  const who = ({ man }: SkillWorth) =>
    man === 'all' ? { who: 'all' } : { who: men[man]!.number, spot: men[man]!.spot };
  const named = (row: SkillWorth) => ({ ...who(row), skill: row.skill });
  const rowOf = (row: SkillWorth) => ({
    ...named(row),
    grades: row.grades,
    gain: row.gain,
    trials: row.trials,
    fresh: row.isFresh,
    schemes: row.byScheme,
  });
  return `${JSON.stringify(
    {
      engine: engineVersion,
      seed,
      inputHash: hash,
      play,
      penaltySeconds: penalty,
      level,
      trials: { first: effort.first, second: effort.second, last: effort.last },
      unit: { leaders: (unit.leaders ?? []).map(named), rows: unit.rows.map(rowOf) },
      each: { leaders: (each?.leaders ?? []).map(named), rows: (each?.rows ?? []).map(rowOf) },
      alreadyBest: men.map(({ number, spot, best }) => ({ who: number, spot, skills: best })),
    },
    null,
    2,
  )}\n`;
}
