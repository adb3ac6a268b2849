import { useRuns } from './runs-state.ts';
import { type AskedRun, type RunNews, searchRuns } from './search-runs.ts';
import { type Search, type SearchKind, useSearch } from './use-search.ts';

const kind: SearchKind<AskedRun, RunNews> = { run: searchRuns, change: useRuns.getState().change };

/** The search for when a man should go; another `text` is another question. */
export function useFindRuns(text: string | undefined): Search<AskedRun> {
  return useSearch(kind, text);
}
