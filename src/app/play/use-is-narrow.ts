import { useSyncExternalStore } from 'react';

const narrow = window.matchMedia('(max-width: 44rem)');

/** Whether the page is as narrow as a phone's: the same width at which the style sheets put everything in one column. */
export function useIsNarrow(): boolean {
  return useSyncExternalStore(
    (onChange) => {
      narrow.addEventListener('change', onChange);
      return () => narrow.removeEventListener('change', onChange);
    },
    () => narrow.matches,
  );
}
