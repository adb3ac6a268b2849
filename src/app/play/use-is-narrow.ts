import { useMedia } from '../look/use-media.ts';

/** Whether the page is as narrow as a phone's: the same width at which the style sheets put everything in one column. */
export function useIsNarrow(): boolean {
  return useMedia('(max-width: 44rem)');
}
