import { usePractice } from './practice-state.ts';
import { type AskedPractice, type PracticeNews, searchPractice } from './search-practice.ts';
import { type Search, type SearchKind, useSearch } from './use-search.ts';

const kind: SearchKind<AskedPractice, PracticeNews> = { run: searchPractice, change: usePractice.getState().change };

/** The search for what practice is worth; another `text` is another question. */
export function useFindPractice(text: string | undefined): Search<AskedPractice> {
  return useSearch(kind, text);
}
