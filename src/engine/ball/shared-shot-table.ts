import type { Athlete, Keeper } from '../people/athlete.ts';
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

function tableKey(shooter: Athlete, keeper: Keeper, parameters: ShotParameters): string {
  const { shotSpeed, shotScatter } = shooter;
  const { bodyReach, handSpeed, shotReaction } = keeper;
  return [shotSpeed, shotScatter, bodyReach, handSpeed, shotReaction, ...Object.values(parameters)].join(' ');
}
