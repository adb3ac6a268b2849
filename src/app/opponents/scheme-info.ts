import { schemeById, schemeList } from '../../engine/index.ts';
import type { Playbook } from '../../playbook/index.ts';

/** A scheme as the screen tells of it, built in or own. */
export interface SchemeInfo {
  readonly id: string;
  readonly name: string;
  readonly own: boolean;
  /** One sentence: what it does. */
  readonly summary: string;
  /** What it leaves open on purpose; empty when nobody said so. */
  readonly leaves: string;
  /** Each defender with his home, yards, and what he carries. */
  readonly men: readonly SchemeMan[];
}

export interface SchemeMan {
  readonly name: string;
  readonly home: readonly [number, number];
  readonly stick: 'short' | 'pole';
}

/** The scheme of this id, the playbook's own first; undefined when nobody knows it. */
export function schemeInfo(playbook: Pick<Playbook, 'schemes'>, id: string): SchemeInfo | undefined {
  const own = playbook.schemes?.find((scheme) => scheme.id === id);
  if (own !== undefined) {
    return {
      id,
      name: own.name,
      own: true,
      summary: own.notes ?? 'Written by you: a duty for each defender and each place of the ball.',
      leaves: '',
      men: Object.entries(own.men).map(([name, home]) => ({
        name,
        home,
        stick: own.shortSticks?.includes(name) === true ? 'short' : 'pole',
      })),
    };
  }
  const scheme = schemeById(id);
  if (scheme === undefined) return undefined;
  return {
    id,
    name: scheme.notes.name,
    own: false,
    summary: scheme.notes.summary,
    leaves: scheme.notes.leaves,
    men: scheme.names.map((name, i) => ({
      name,
      home: [scheme.home[2 * i]!, scheme.home[2 * i + 1]!],
      stick: scheme.shortSticks.includes(i) ? 'short' : 'pole',
    })),
  };
}

/** Everything that an opponent can be believed to play: own schemes first, because who wrote one looks for it. */
export function allSchemes(playbook: Pick<Playbook, 'schemes'>): readonly SchemeInfo[] {
  const ids = [...(playbook.schemes ?? []), ...schemeList].map(({ id }) => id);
  return [...new Set(ids)].flatMap((id) => schemeInfo(playbook, id) ?? []);
}

/** Built-in schemes by how many men are missing, in the order of how often they are met. */
export const schemeGroups: readonly { readonly title: string; readonly has: (scheme: SchemeInfo) => boolean }[] = [
  { title: 'Your own', has: ({ own }) => own },
  { title: 'A man down', has: ({ own, men }) => !own && men.length === 5 },
  { title: 'Two or three men down', has: ({ own, men }) => !own && men.length < 5 },
  { title: 'Even, under a flag', has: ({ own, men }) => !own && men.length > 5 },
];
