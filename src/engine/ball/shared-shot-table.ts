import type { Athlete, Keeper } from '../people/athlete.ts';
import type { KeeperCover } from '../people/keeper-cover.ts';
import type { ShotParameters } from './shot-parameters.ts';
import { createShotTable, type ShotTable } from './shot-table.ts';

/** Tables kept at most; a playbook's six against one keeper need six. The oldest goes first. */
const mostTables = 96;

/**
 * Tables already made, by everything that a table depends on. A table takes milliseconds and the same six shoot on the same
 * keeper against every scheme. It is never written to once made, so keeping it changes no answer.
 */
const tables = new Map<string, ShotTable>();

/** The shot table of a shooter against a keeper, made now or taken from those that were made before. */
export function sharedShotTable(shooter: Athlete, keeper: Keeper, parameters: ShotParameters): ShotTable {
  const key = tableKey(shooter, keeper, parameters);
  const known = tables.get(key);
  if (known !== undefined) return known;
  const made = createShotTable(shooter, keeper, parameters);
  if (tables.size >= mostTables) tables.delete(tables.keys().next().value as string);
  tables.set(key, made);
  return made;
}

const even: KeeperCover = { highLeft: 1, highRight: 1, lowLeft: 1, lowRight: 1 };

function tableKey(shooter: Athlete, keeper: Keeper, parameters: ShotParameters): string {
  const { shotSpeed, shotScatter } = shooter;
  const { bodyReach, handSpeed, shotReaction } = keeper;
  const { highLeft, highRight, lowLeft, lowRight } = keeper.cover ?? even;
  const cover = [highLeft, highRight, lowLeft, lowRight];
  return [shotSpeed, shotScatter, bodyReach, handSpeed, shotReaction, ...cover, ...Object.values(parameters)].join(' ');
}
