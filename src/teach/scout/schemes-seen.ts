import { type Playbook, schemeName } from '../../playbook/index.ts';
import { schemeSeen } from '../season/chance-groups.ts';

/** How often a scheme was seen of an opponent, in man-ups of ours and of others. */
export interface SchemeSeenOften {
  readonly scheme: string;
  readonly name: string;
  readonly times: number;
  /** The days on which, the last first; those that nobody wrote down are left out. */
  readonly days: readonly string[];
}

/** The schemes that were seen of an opponent, as they were named or as marks told that were taken, what was seen most first. What was only believed is not among them. */
export function schemesSeenOf(playbook: Playbook, opponent: string): readonly SchemeSeenOften[] {
  const days_byScheme = new Map<string, (string | undefined)[]>();
  for (const chance of playbook.chances ?? []) {
    if (chance.opponent !== opponent || chance.side === 'theirs') continue;
    const scheme = schemeSeen(chance);
    if (scheme === undefined) continue;
    days_byScheme.set(scheme, [...(days_byScheme.get(scheme) ?? []), chance.date]);
  }
  return [...days_byScheme]
    .map(([scheme, days]) => ({
      scheme,
      name: schemeName(playbook, scheme),
      times: days.length,
      days: [...new Set(days.flatMap((day) => day ?? []))].sort().reverse(),
    }))
    .sort((one, other) => other.times - one.times || (one.name < other.name ? -1 : 1));
}
