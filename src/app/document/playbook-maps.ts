import * as Y from 'yjs';
import { type Playbook, sameValue } from '../../playbook/index.ts';
import { type Entity, entitiesOf, type ListName, listNames, nameOfEntity, optionalLists } from './entity-lists.ts';
import { matchEntities } from './match-entities.ts';
import { risingRanks } from './ranks.ts';

// How a playbook lies in a Yjs document. Each entity is one value under a key that never changes, whatever happens to its id or number;
// its place is a rank in a map beside it, so that a move and an edit of the same entity in two tabs both stay. Values are plain JSON and
// are never changed in place: Yjs keeps the object that was set, so an entity that nobody touched keeps its identity.

export interface PlaybookMaps {
  /** Under `team` (without roster), `settings`, `notes`, `copies`, and `has:LIST` for an optional list that is there. */
  readonly whole: Y.Map<unknown>;
  readonly lists: Readonly<Record<ListName, ListMaps>>;
}

interface ListMaps {
  readonly values: Y.Map<Entity>;
  readonly ranks: Y.Map<number>;
}

/** A playbook as read from the maps, with the keys of its entities in the order of its lists. */
export interface Projection {
  readonly playbook: Playbook;
  readonly keys: Readonly<Record<ListName, readonly string[]>>;
}

export function mapsOf(doc: Y.Doc): PlaybookMaps {
  const lists = listNames.map((list) => [list, { values: doc.getMap(list), ranks: doc.getMap(`${list}:rank`) }]);
  return { whole: doc.getMap('whole'), lists: Object.fromEntries(lists) as Record<ListName, ListMaps> };
}

/** All maps, for those who watch them. */
export function everyMap({ whole, lists }: PlaybookMaps): readonly Y.Map<unknown>[] {
  return [whole, ...Object.values(lists).flatMap(({ values, ranks }) => [values, ranks] as Y.Map<unknown>[])];
}

/**
 * The playbook that lies in the maps. What did not change keeps its identity from `previous`: entities always do, lists when none of their maps
 * is in `changed`. What is not there at all comes out as undefined or empty; the caller looks whether the result is a playbook.
 */
export function projectPlaybook(
  maps: PlaybookMaps,
  previous?: Projection,
  changed: ReadonlySet<unknown> = new Set(everyMap(maps)),
): Projection {
  const touched = (list: ListName) => changed.has(maps.lists[list].values) || changed.has(maps.lists[list].ranks);
  const keys = { ...previous?.keys } as Record<ListName, readonly string[]>;
  const read = {} as Record<ListName, readonly Entity[]>;
  for (const list of listNames) {
    if (previous !== undefined && !touched(list)) {
      read[list] = entitiesOf(previous.playbook, list);
      continue;
    }
    keys[list] = sortedKeys(maps.lists[list]);
    read[list] = keys[list].map((key) => maps.lists[list].values.get(key)!);
  }
  const same = previous !== undefined && !changed.has(maps.whole) && !touched('roster');
  const team = same ? previous.playbook.team : readTeam(maps.whole.get('team'), read.roster);
  return { playbook: assemble(maps.whole, team, read), keys };
}

/** Writes what differs between the playbook of a projection and another one, and nothing else. Call it inside a transaction. */
export function writePlaybook(maps: PlaybookMaps, from: Projection, to: Playbook, newKey: () => string): void {
  const { playbook } = from;
  for (const list of listNames) writeList(maps.lists[list], from.keys[list], playbook, to, list, newKey);
  if (playbook.team !== to.team) writeValue(maps.whole, 'team', { ...to.team, roster: undefined });
  writeValue(maps.whole, 'settings', to.settings);
  writeValue(maps.whole, 'notes', to.notes);
  writeValue(maps.whole, 'copies', to.copies);
  for (const list of optionalLists) writeValue(maps.whole, `has:${list}`, to[list] === undefined ? undefined : true);
}

/** A document that holds nothing yet, as something to write from. */
export const nothingYet: Projection = {
  // Only read for what it lacks; it never leaves this layer.
  playbook: { team: { roster: [] }, plays: [] } as unknown as Playbook,
  keys: { roster: [], sets: [], plays: [], schemes: [], opponents: [], practices: [], quizzes: [], chances: [] },
};

/**
 * The update that puts a playbook into an empty document. The same playbook always gives the same bytes, so that two tabs which both begin with it
 * at the same time hold it once and not twice.
 */
export function seedUpdate(playbook: Playbook): Uint8Array {
  const text = JSON.stringify(playbook);
  const doc = new Y.Doc();
  doc.clientID = hashOf(text);
  let count = 0;
  doc.transact(() => writePlaybook(mapsOf(doc), nothingYet, JSON.parse(text) as Playbook, () => `seed-${count++}`));
  const update = Y.encodeStateAsUpdate(doc);
  doc.destroy();
  return update;
}

function writeList(
  { values, ranks }: ListMaps,
  oldKeys: readonly string[],
  before: Playbook,
  after: Playbook,
  list: ListName,
  newKey: () => string,
): void {
  const old = entitiesOf(before, list);
  const next = entitiesOf(after, list);
  if (old === next) return;
  const origins = matchEntities(old, next, nameOfEntity);
  const keys = origins.map((origin) => oldKeys[origin] ?? newKey());
  for (const [index, key] of keys.entries()) {
    const value = old[origins[index]!];
    if (value !== next[index] && !sameValue(value, next[index])) values.set(key, plain(next[index]!));
  }
  const staying = new Set(keys);
  // The rank stays: should another tab have changed the entity meanwhile, it comes back to its place.
  for (const key of oldKeys) if (!staying.has(key)) values.delete(key);
  const order = oldKeys.filter((key) => staying.has(key));
  if (keys.length === order.length && keys.every((key, index) => key === order[index])) return;
  const old_byKey = new Set(oldKeys);
  const had = keys.map((key) => (old_byKey.has(key) ? ranks.get(key) : undefined));
  for (const [index, rank] of risingRanks(had).entries()) if (had[index] !== rank) ranks.set(keys[index]!, rank);
}

function writeValue(map: Y.Map<unknown>, key: string, value: unknown): void {
  if (sameValue(map.get(key), value)) return;
  if (value === undefined) map.delete(key);
  else map.set(key, plain(value));
}

/** A value without members that are undefined, which a file does not hold either. The same object when it has none. */
function plain<T>(value: T): T {
  return holdsUndefined(value) ? (JSON.parse(JSON.stringify(value)) as T) : value;
}

function holdsUndefined(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return value === undefined;
  return Object.values(value).some(holdsUndefined);
}

function sortedKeys({ values, ranks }: ListMaps): readonly string[] {
  // Two tabs may have put something at the same place at once: then the key decides, the same in both.
  const rank = (key: string) => ranks.get(key) ?? Number.POSITIVE_INFINITY;
  return [...values.keys()].sort((a, b) => compare(rank(a), rank(b)) || (a < b ? -1 : 1));
}

/** Not a difference: that of two infinities is NaN. */
function compare(a: number, b: number): number {
  return a === b ? 0 : a < b ? -1 : 1;
}

function readTeam(stored: unknown, roster: readonly Entity[]): Playbook['team'] {
  const { name, level, ruleCode, depth, notes, ...rest } = (stored ?? {}) as Playbook['team'];
  return {
    name,
    level,
    ...(ruleCode !== undefined && { ruleCode }),
    ...rest,
    roster: roster as Playbook['team']['roster'],
    ...(depth !== undefined && { depth }),
    ...(notes !== undefined && { notes }),
  };
}

/** In the order in which a file is written. */
function assemble(whole: Y.Map<unknown>, team: Playbook['team'], read: Record<ListName, readonly Entity[]>): Playbook {
  const optional = (list: (typeof optionalLists)[number]) =>
    (read[list].length > 0 || whole.has(`has:${list}`)) && { [list]: read[list] };
  return {
    format: 'sliderule-playbook',
    version: 1,
    team,
    ...optional('sets'),
    plays: read.plays as Playbook['plays'],
    ...optional('schemes'),
    ...optional('opponents'),
    ...optional('practices'),
    ...optional('quizzes'),
    ...optional('chances'),
    ...(whole.has('settings') && { settings: whole.get('settings') as NonNullable<Playbook['settings']> }),
    ...(whole.has('notes') && { notes: whole.get('notes') as string }),
    ...(whole.has('copies') && { copies: whole.get('copies') as string[] }),
  };
}

/** FNV-1a, 32 bits: https://datatracker.ietf.org/doc/html/draft-eastlake-fnv-17 section 2. */
function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}
