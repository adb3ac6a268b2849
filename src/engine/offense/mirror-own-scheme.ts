import { mirrorDefenderName } from '../defense/mirror-name.ts';
import type { OwnDuty, OwnSchemeData, PlaceName } from '../defense/own-scheme.ts';
import { mirrorSpotId } from './mirror.ts';

/**
 * A coach's scheme turned over: every place to the other side, and every name of a place or a man to its twin.
 * Men keep their order. Mirroring twice gives the scheme back, exactly.
 */
export function mirrorOwnScheme(data: OwnSchemeData): OwnSchemeData {
  return {
    ...data,
    defenders: data.defenders.map((man) => ({
      ...man,
      name: mirrorDefenderName(man.name),
      home: mirrorPair(man.home),
    })),
    rows: Object.fromEntries(
      Object.entries(data.rows).map(([place, duties]) => [mirrorPlaceName(place), mirrorRow(duties)]),
    ),
  };
}

/** The twin of a place: TR is TL, topRight is topLeft, crease and behind are their own twins. */
export function mirrorPlaceName(name: PlaceName): PlaceName {
  if (name.endsWith('Right')) return `${name.slice(0, -'Right'.length)}Left`;
  if (name.endsWith('Left')) return `${name.slice(0, -'Left'.length)}Right`;
  return mirrorSpotId(name);
}

function mirrorRow(duties: Readonly<Record<string, OwnDuty>>): Readonly<Record<string, OwnDuty>> {
  return Object.fromEntries(Object.entries(duties).map(([man, own]) => [mirrorDefenderName(man), mirrorDuty(own)]));
}

function mirrorDuty(own: OwnDuty): OwnDuty {
  switch (own.duty) {
    case 'ball':
      return own;
    case 'man':
    case 'lock':
    case 'front':
      return { duty: own.duty, who: mirrorPlaceName(own.who) };
    case 'split':
      return { duty: 'split', who: [mirrorPlaceName(own.who[0]), mirrorPlaceName(own.who[1])] };
    case 'lane':
    case 'pipe': {
      const who = mirrorPlaceName(own.who);
      return own.at === undefined ? { duty: own.duty, who } : { duty: own.duty, who, at: mirrorPair(own.at) };
    }
    case 'place':
      return { duty: 'place', at: mirrorPair(own.at) };
    default:
      return exhaustive(own);
  }
}

function mirrorPair([x, y]: readonly [number, number]): readonly [number, number] {
  return [x === 0 ? 0 : -x, y];
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown duty: ${JSON.stringify(value)}`);
}
