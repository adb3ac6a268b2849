import { type Chance, type Playbook, schemeName } from '../../playbook/index.ts';
import { schemeTold } from '../scout/told-by-marks.ts';
import { periodText } from './period-words.ts';

/** By what chances are put together. */
export const chanceGroupings = ['call', 'scheme', 'unit', 'opponent', 'side', 'period'] as const;
export type ChanceGrouping = (typeof chanceGroupings)[number];

/** Chances that have one thing in common. */
export interface ChanceGroup {
  /** What was written; empty where nothing was. */
  readonly key: string;
  /** For people. */
  readonly name: string;
  readonly chances: readonly Chance[];
}

/** Chances by what they have in common: most chances first, those of which it is not known last. Every chance stands in exactly one group. */
export function groupChances(
  playbook: Playbook,
  chances: readonly Chance[],
  by: ChanceGrouping,
): readonly ChanceGroup[] {
  const found = new Map<string, Chance[]>();
  for (const chance of chances) {
    const key = groupKeyOf(chance, by);
    const group = found.get(key);
    if (group === undefined) found.set(key, [chance]);
    else group.push(chance);
  }
  return [...found]
    .map(([key, members]): ChanceGroup => ({ key, name: nameOf(playbook, by, key), chances: members }))
    .sort((one, other) => rank(one) - rank(other) || (one.name < other.name ? -1 : 1));
}

/**
 * The scheme that somebody saw and named, else the one that marks told by themselves when they were taken. What was only believed (of an opponent before the whistle, or
 * by marks that nobody accepted) is no observation: counted as one it would confirm itself.
 */
export function schemeSeen(chance: Pick<Chance, 'scheme' | 'byMarks'>): string | undefined {
  return chance.scheme ?? schemeTold(chance);
}

/** The scheme that was expected where none was named: the one that was likelier than all others together. */
export function schemeExpected(chance: Chance): string | undefined {
  if (schemeSeen(chance) !== undefined) return undefined;
  return Object.entries(chance.belief ?? {}).find(([, share]) => share > 0.5)?.[0];
}

/** What a chance has in common with others; empty where it is not written down. */
export function groupKeyOf(chance: Chance, by: ChanceGrouping): string {
  switch (by) {
    case 'call':
      return chance.call ?? '';
    case 'scheme':
      return schemeSeen(chance) ?? '';
    case 'unit':
      return chance.unit ?? '';
    case 'opponent':
      return chance.opponent ?? '';
    case 'side':
      return chance.fromSide ?? '';
    case 'period':
      return chance.period === undefined ? '' : String(chance.period);
    default:
      return exhaustive(by);
  }
}

function nameOf(playbook: Playbook, by: ChanceGrouping, key: string): string {
  if (key === '') return 'not written down';
  switch (by) {
    case 'call':
      return playName(playbook, key);
    case 'scheme':
      return schemeName(playbook, key);
    case 'opponent':
      return opponentName(playbook, key);
    case 'side':
      return `from the ${key}`;
    case 'period':
      return periodName(Number(key));
    case 'unit':
      return key;
    default:
      return exhaustive(by);
  }
}

function periodName(period: number): string {
  const text = periodText(period);
  return text.startsWith('P') ? `period ${period}` : text;
}

/** How a play is called; one that is gone goes by what was written. */
export function playName({ plays }: Playbook, call: string): string {
  return plays.find(({ id }) => id === call)?.name ?? call;
}

/** How an opponent is called; one that is gone goes by what was written. */
export function opponentName({ opponents }: Playbook, opponent: string): string {
  return opponents?.find(({ id }) => id === opponent)?.name ?? opponent;
}

function rank({ key, chances }: ChanceGroup): number {
  return key === '' ? 1 : -chances.length;
}

function exhaustive(by: never): never {
  throw new TypeError(`unknown grouping: ${JSON.stringify(by)}`);
}
