import { type NewChance, type Playbook, shotResults } from '../../playbook/index.ts';
import { counted } from '../../render/index.ts';
import { knownSchemes } from './chance-columns.ts';

/** Names that are told before the rest is only counted. */
const mostNames = 6;

/** What of chances that were read is likely a slip, though they can be taken as they stand: a sentence for each kind, with how many lines. */
export function tableWarnings(playbook: Playbook, chances: readonly NewChance[]): readonly string[] {
  const { plays, opponents, team } = playbook;
  const idsOf = (known: readonly { readonly id: string }[]) => new Set(known.map(({ id }) => id));
  const numbers = new Set(team.roster.map(({ number }) => number));
  // Numbers of theirs are in no roster, and without one nobody is missing.
  const ours = numbers.size === 0 ? [] : chances.filter(({ side }) => side === 'ours');
  const shotless = chances.filter(({ shots, result }) => shots === 0 && shotResults.has(result)).length;
  return [
    ...unknown(chances, 'opponent', idsOf(opponents ?? []), absent),
    ...unknown(chances, 'call', idsOf(plays), absent),
    ...unknown(chances, 'scheme', idsOf(knownSchemes(playbook)), absent),
    ...unknown(ours, 'scorer', numbers, unlisted),
    ...unknown(ours, 'assist', numbers, unlisted),
    ...(shotless === 0
      ? []
      : [`shots: ${counted(shotless, 'line ends in a shot and counts', 'lines end in a shot and count')} 0 shots.`]),
  ];
}

const absent = (lines: number): string =>
  `${counted(lines, 'line names', 'lines name')} one that the playbook does not have`;
const unlisted = (lines: number): string =>
  `${counted(lines, 'line has', 'lines have')} a number that is not in the roster`;

/** What stands in a column and is not known, each with how often; nothing when all is known. */
function unknown<Key extends 'opponent' | 'call' | 'scheme' | 'scorer' | 'assist'>(
  chances: readonly NewChance[],
  key: Key,
  known: ReadonlySet<NonNullable<NewChance[Key]>>,
  words: (lines: number) => string,
): readonly string[] {
  const times = new Map<NonNullable<NewChance[Key]>, number>();
  for (const { [key]: value } of chances)
    if (value !== undefined && !known.has(value)) times.set(value, (times.get(value) ?? 0) + 1);
  if (times.size === 0) return [];
  const most = [...times].sort(([, one], [, other]) => other - one);
  const lines = most.reduce((sum, [, count]) => sum + count, 0);
  const told = most.slice(0, mostNames).map(([name, count]) => (count === 1 ? `${name}` : `${name} (${count})`));
  const rest = most.length > mostNames ? `, and ${most.length - mostNames} more` : '';
  return [`${key}: ${words(lines)}: ${told.join(', ')}${rest}.`];
}
