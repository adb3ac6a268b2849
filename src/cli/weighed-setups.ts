import type { WeighedSetup } from '../worker/index.ts';
import { type Foes, weightOf } from './choose-matchups.ts';
import type { Conditions } from './conditions.ts';
import type { OpenPlaybook } from './open-playbook.ts';

/** A play against each of the schemes, by how likely each is. */
export function weighedSetups(
  { document }: OpenPlaybook,
  play: string,
  foes: Foes,
  { side, penalty, level, seed }: Conditions,
): readonly WeighedSetup[] {
  const { schemes, opponent } = foes;
  return schemes.map((scheme) => ({
    setup: { document, play, scheme, ...(opponent && { opponent: opponent.id }), side, penalty, level, seed },
    weight: weightOf(foes, scheme),
  }));
}
