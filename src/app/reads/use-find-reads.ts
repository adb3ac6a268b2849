import { useReads } from './reads-state.ts';
import { type AskedReads, type ReadsNews, searchReads } from './search-reads.ts';
import { type Search, type SearchKind, useSearch } from './use-search.ts';

const kind: SearchKind<AskedReads, ReadsNews> = { run: searchReads, change: useReads.getState().change };

/** The search for a man's reads, round after round; another `text` is another question. */
export function useFindReads(text: string | undefined): Search<AskedReads> {
  return useSearch(kind, text);
}
