import type { Chance, ChanceSide } from '../../playbook/index.ts';
import { schemeSeen } from '../../teach/index.ts';

/** Which chances are looked at; what is empty leaves out none, but for the side: then ours and theirs, without the man-ups of other teams. */
export interface ChanceFilter {
  readonly side: '' | ChanceSide;
  readonly opponent: string;
  readonly call: string;
  readonly scheme: string;
  readonly result: string;
}

export const everything: ChanceFilter = { side: '', opponent: '', call: '', scheme: '', result: '' };

/** The chances that a filter lets through, in their order; the same list when it lets all of them. */
export function filterChances(chances: readonly Chance[], filter: ChanceFilter): readonly Chance[] {
  if (isEverything(filter) && !chances.some(isOfOthers)) return chances;
  const { side, opponent, call, scheme, result } = filter;
  return chances.filter(
    (chance) =>
      (side === '' ? !isOfOthers(chance) : chance.side === side) &&
      (opponent === '' || chance.opponent === opponent) &&
      (call === '' || chance.call === call) &&
      (scheme === '' || schemeSeen(chance) === scheme) &&
      (result === '' || chance.result === result),
  );
}

/** Whether a man-up is of other teams, looked at on film: it is counted neither as ours nor as theirs. */
export function isOfOthers({ side }: Chance): boolean {
  return side === 'others';
}

export function isEverything(filter: ChanceFilter): boolean {
  return Object.values(filter).every((value) => value === '');
}

/** What of one kind is written in a season, each once, sorted: for the lists to choose from. */
export function writtenIn(chances: readonly Chance[], kind: 'opponent' | 'call' | 'scheme'): readonly string[] {
  const read = (chance: Chance): string | undefined => (kind === 'scheme' ? schemeSeen(chance) : chance[kind]);
  return [...new Set(chances.flatMap((chance) => read(chance) ?? []))].sort();
}

/** Newest first: by day, then by period and the clock that runs down; those without a day last, the last written first. */
export function newestFirst(chances: readonly Chance[]): readonly Chance[] {
  const key = ({ date = '', period = 0, clock = 0 }: Chance): string =>
    `${date} ${String(period).padStart(2, '0')} ${String(10_000 - Math.floor(clock)).padStart(5, '0')}`;
  return [...chances.entries()]
    .map(([at, chance]) => ({ at, chance, key: key(chance) }))
    .sort((one, other) => (one.key === other.key ? other.at - one.at : one.key < other.key ? 1 : -1))
    .map(({ chance }) => chance);
}
