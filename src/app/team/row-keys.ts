import type { Player } from '../../playbook/index.ts';
import { matchEntities } from '../document/match-entities.ts';

/** Names for the rows of a roster that stay with their men, whatever is typed into them and wherever they are moved. */
export interface RowKeys {
  /** One name a man, in the order of the roster. The same roster gives the same names. */
  readonly keysOf: (roster: readonly Player[]) => readonly string[];
  /** The name that the next new man gets: that of the empty row at the end, so that its cell keeps the hand that types in it. */
  readonly next: () => string;
}

export function createRowKeys(): RowKeys {
  let known: readonly Player[] = [];
  let keys: readonly string[] = [];
  let count = 0;
  return {
    keysOf: (roster) => {
      if (roster === known) return keys;
      const origins = matchEntities(known, roster, ({ number }) => String(number));
      const before = keys;
      keys = origins.map((origin) => before[origin] ?? `row-${count++}`);
      known = roster;
      return keys;
    },
    next: () => `row-${count}`,
  };
}
