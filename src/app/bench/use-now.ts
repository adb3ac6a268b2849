import { useEffect, useState } from 'react';
import { nowSeconds } from './bench-store.ts';

/** Milliseconds between two looks at the clock: a tenth of a second late is seen by nobody. */
const every = 100;

/** The time now, s since 1970; it goes on while `running`, and is right again at once when the page comes back into sight. */
export function useNow(running: boolean, game: unknown): number {
  const [now, setNow] = useState(nowSeconds);
  useEffect(() => {
    const look = (): void => setNow(nowSeconds());
    look();
    // A game that was changed is looked at anew, also where nothing runs.
    if (!running || game === undefined) return undefined;
    const timer = setInterval(look, every);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [running, game]);
  return now;
}
