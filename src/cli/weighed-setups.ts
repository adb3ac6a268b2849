import type { WeighedSetup } from '../worker/index.ts';
import type { Foes } from './choose-matchups.ts';
import type { Conditions } from './conditions.ts';
import type { OpenPlaybook } from './open-playbook.ts';

/** A play against each of the schemes, as likely as the opponent plays it; all alike without an opponent. */
export function weighedSetups(
  { document }: OpenPlaybook,
  play: string,
  { schemes, opponent }: Foes,
  { side, penalty, level, seed }: Conditions,
): readonly WeighedSetup[] {
  return schemes.map((scheme) => ({
    setup: { document, play, scheme, ...(opponent && { opponent: opponent.id }), side, penalty, level, seed },
    weight: opponent?.schemes?.[scheme] ?? 1,
  }));
}
