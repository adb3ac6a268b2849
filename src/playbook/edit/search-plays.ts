import { sets } from '../../engine/index.ts';
import type { OwnSet, PlayEntry } from '../schema.ts';

export interface FoundPlay {
  readonly play: PlayEntry;
  /** How well it matches, above 0; the sum over the words of the query. */
  readonly score: number;
}

/** What a word of the query is worth where it is found. */
const worth = { nameStart: 8, wordStart: 5, inName: 3, tag: 4, set: 3, notes: 1 } as const;

/**
 * The plays that match every word of the query, best first, ties in the order of the playbook. All of them for an empty query.
 * Looks at name, tags, set and notes; capitals and accents do not matter.
 *
 * `searchPlays(plays, sets, 'pick 222')` finds a play tagged "picks" from the 2-2-2 low.
 */
export function searchPlays(
  plays: readonly PlayEntry[],
  ownSets: readonly OwnSet[],
  query: string,
): readonly FoundPlay[] {
  const words = plain(query)
    .split(/\s+/)
    .filter((word) => word !== '');
  const found = plays.flatMap((play) => {
    const scores = words.map((word) => scoreOf(play, ownSets, word));
    if (scores.includes(0)) return [];
    return { play, score: scores.reduce((sum, score) => sum + score, words.length === 0 ? 1 : 0) };
  });
  return found.sort((a, b) => b.score - a.score);
}

function scoreOf(play: PlayEntry, ownSets: readonly OwnSet[], word: string): number {
  return Math.max(
    nameScore(plain(play.name), word),
    (play.tags ?? []).some((tag) => startsAWord(plain(tag), word)) ? worth.tag : 0,
    setNames(play, ownSets).some((name) => startsAWord(name, word)) ? worth.set : 0,
    startsAWord(plain(play.notes ?? ''), word) ? worth.notes : 0,
  );
}

function nameScore(name: string, word: string): number {
  if (name.startsWith(word)) return worth.nameStart;
  if (startsAWord(name, word)) return worth.wordStart;
  return name.includes(word) ? worth.inName : 0;
}

function setNames({ set }: PlayEntry, ownSets: readonly OwnSet[]): readonly string[] {
  const own = ownSets.find((each) => each.id === set);
  if (own !== undefined) return [own.id, plain(own.name)];
  const builtIn = Object.hasOwn(sets, set) ? sets[set] : undefined;
  return builtIn === undefined
    ? [plain(set)]
    : [builtIn.id, plain(builtIn.name), ...builtIn.aliases, set.replaceAll('-', '')];
}

function startsAWord(text: string, word: string): boolean {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    if (at === 0 || !/[\p{L}\p{N}]/u.test(text[at - 1]!)) return true;
  }
  return false;
}

function plain(text: string): string {
  return text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
}
