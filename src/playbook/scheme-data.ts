import {
  createOwnScheme,
  type OwnDuty,
  type OwnSchemeData,
  type Play,
  type Scheme,
  schemeById,
  sets,
} from '../engine/index.ts';
import { parseDuty, type SchemeNames } from './language/parse-duty.ts';
import type { Playbook, SchemeEntry } from './schema.ts';

/** The spots of every set, built in or own: what a scheme's rows and the depth chart may name. */
export function allSpots(playbook: Pick<Playbook, 'sets'>): ReadonlySet<string> {
  const builtIn = Object.values(sets).flatMap((set) => set.spots.map((spot) => spot.id));
  return new Set([...builtIn, ...(playbook.sets ?? []).flatMap((set) => Object.keys(set.spots))]);
}

/** An own scheme as the engine takes it; duties that cannot be read are left out. */
export function toSchemeData(playbook: Pick<Playbook, 'sets'>, entry: SchemeEntry): OwnSchemeData {
  const names: SchemeNames = { men: new Set(Object.keys(entry.men)), spots: allSpots(playbook) };
  const rows: Record<string, Record<string, OwnDuty>> = {};
  for (const row of entry.rows) {
    const duties: Record<string, OwnDuty> = {};
    for (const text of row.do) {
      const { value } = parseDuty(text, names);
      if (value !== undefined) duties[value.by] = value.own;
    }
    rows[row.ball] = duties;
  }
  return {
    id: entry.id,
    name: entry.name,
    defenders: Object.entries(entry.men).map(([name, home]) => ({
      name,
      home,
      stick: entry.shortSticks?.includes(name) === true ? 'short' : 'pole',
    })),
    ...(entry.extends !== undefined && { extends: entry.extends }),
    rows,
  };
}

/**
 * The scheme of this id, the playbook's own first, to be played against this play; undefined for an unknown id.
 * The play as written gives the places that the rows' spots stand for: a mirrored chance turns the scheme over by its sense.
 */
export function toEngineScheme(playbook: Playbook, id: string, play: Pick<Play, 'spots'>): Scheme | undefined {
  const own = playbook.schemes?.find((scheme) => scheme.id === id);
  return own === undefined ? schemeById(id) : createOwnScheme(toSchemeData(playbook, own), play.spots).scheme;
}
