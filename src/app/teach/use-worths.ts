import { useEffect, useMemo } from 'react';
import type { Playbook } from '../../playbook/index.ts';
import type { MeasuredPlay, PlaysAsked } from '../../teach/index.ts';
import { type SearchKind, useSearch } from '../reads/use-search.ts';
import { type AskedWorths, searchWorths, type WorthsNews } from './search-worths.ts';
import { useSheets } from './sheets-state.ts';
import { worthQuestions } from './worths-question.ts';

const kind: SearchKind<AskedWorths, WorthsNews> = { run: searchWorths, change: useSheets.getState().change };

export interface Worths {
  /** What is known of each play, in their order; undefined for one that is not known yet. */
  readonly found: readonly (MeasuredPlay | undefined)[];
  /** Goes on with what is not known. */
  readonly find: () => void;
  readonly stop: () => void;
}

/** What plays make against schemes, found as soon as it is asked: a page without it says half of what it could. */
export function useWorths(playbook: Playbook, asked: PlaysAsked): Worths {
  const known = useSheets((state) => state.found);
  const questions = useMemo(() => worthQuestions(playbook, asked), [playbook, asked]);
  const text = questions.map((question) => question.text).join('\n');
  const { find, stop } = useSearch(kind, text);
  const isKnown = questions.every((question) => known.has(question.text));
  // Only another question begins a search: one that was stopped stays so until the coach goes on.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text stands for all that is asked
  useEffect(() => {
    if (!isKnown) find({ playbook, asked, questions, known: useSheets.getState().found });
  }, [text]);
  return {
    found: questions.map((question) => known.get(question.text)),
    find: () => find({ playbook, asked, questions, known }),
    stop,
  };
}
