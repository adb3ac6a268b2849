import { useSyncExternalStore } from 'react';

/** Where in the workbench one is; kept in the address, so that Back, reload and a bookmark work. */
export type Place =
  | { readonly kind: 'play'; readonly play: string | undefined }
  | { readonly kind: 'reads'; readonly play: string | undefined }
  | { readonly kind: 'teach'; readonly part: TeachPart; readonly play: string | undefined }
  | { readonly kind: 'team' }
  /** With `part`, that of the opponent in place of what is known of him. */
  | { readonly kind: 'opponents'; readonly opponent: string | undefined; readonly part?: OpponentPart }
  | { readonly kind: 'bench' }
  | { readonly kind: 'season' }
  | { readonly kind: 'playbook' };

/** What there is of an opponent beside what is known of him: his film, and what to do about him. */
export const opponentParts = ['film', 'find-out'] as const;
export type OpponentPart = (typeof opponentParts)[number];

/** What is handed to players, the first of them where nobody says which. */
export const teachParts = ['sheets', 'clip', 'quiz', 'practice'] as const;
export type TeachPart = (typeof teachParts)[number];

/** The address of a place: what stands after the # in the page's. */
export function addressOf(place: Place): string {
  switch (place.kind) {
    case 'play':
    case 'reads':
      return place.play === undefined ? `#/${place.kind}` : `#/${place.kind}/${encodeURIComponent(place.play)}`;
    case 'teach':
      return place.play === undefined
        ? `#/teach/${place.part}`
        : `#/teach/${place.part}/${encodeURIComponent(place.play)}`;
    case 'opponents': {
      const part = place.part === undefined ? '' : `/${place.part}`;
      return place.opponent === undefined ? '#/opponents' : `#/opponents/${encodeURIComponent(place.opponent)}${part}`;
    }
    case 'team':
    case 'bench':
    case 'season':
    case 'playbook':
      return `#/${place.kind}`;
    default:
      return exhaustive(place);
  }
}

/** The place of an address; the play's for any address that is none of ours. */
export function placeOf(address: string): Place {
  const [, kind, name, below] = address.split('/');
  const part = decoded(name);
  switch (kind) {
    case 'team':
    case 'bench':
    case 'season':
    case 'playbook':
      return { kind };
    case 'reads':
      return { kind, play: part };
    case 'teach':
      return { kind, part: teachParts.find((one) => one === part) ?? teachParts[0], play: decoded(below) };
    case 'opponents':
      return { kind, opponent: part, ...(part !== undefined && partBelow(below)) };
    default:
      return { kind: 'play', play: kind === 'play' ? part : undefined };
  }
}

function partBelow(below: string | undefined): { readonly part?: OpponentPart } {
  const part = opponentParts.find((one) => one === below);
  return part === undefined ? {} : { part };
}

export function goTo(place: Place): void {
  window.location.hash = addressOf(place);
}

/** The place one is at, as it changes. */
export function usePlace(): Place {
  const address = useSyncExternalStore(listen, () => window.location.hash);
  return placeOf(address);
}

function listen(onChange: () => void): () => void {
  window.addEventListener('hashchange', onChange);
  return () => window.removeEventListener('hashchange', onChange);
}

// A hand-typed % that encodes nothing is taken as it stands.
function decoded(part: string | undefined): string | undefined {
  if (part === undefined || part === '') return undefined;
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

function exhaustive(place: never): never {
  throw new TypeError(`unknown place: ${JSON.stringify(place)}`);
}
