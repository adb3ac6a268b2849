import type { Matchup } from '../src/engine/index.ts';
import { schemesFor } from '../src/engine/index.ts';
import { demoPlaybook, demoText } from '../src/playbook/index.ts';
import { buildMatchup, type MatchupChoice, manDownSchemeIds, type TrialSetup } from '../src/worker/index.ts';

/** Seed of every trial in the bench. */
export const benchSeed = 1;

/** Every play of the demo playbook against every five-man scheme, from the right side, 60 s of penalty. */
export const houseChoices: readonly MatchupChoice[] = demoPlaybook.plays.flatMap(({ id: play }) =>
  manDownSchemeIds(demoPlaybook)
    .filter((scheme) => schemesFor(5).some(({ id }) => id === scheme))
    .map((scheme) => ({ play, scheme, side: 'right' as const, penalty: 60, level: null })),
);

export function houseMatchups(): readonly Matchup[] {
  return houseChoices.map((choice) => {
    const built = buildMatchup(demoPlaybook, choice);
    if (built.kind === 'refused') throw new RangeError(built.reason);
    return built.matchup;
  });
}

/** The same as plain data for worker threads. */
export function houseSetups(): readonly TrialSetup[] {
  return houseChoices.map((choice) => ({ document: demoText, seed: benchSeed, ...choice }));
}
