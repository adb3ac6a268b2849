import { useEffect } from 'react';

/** Keeps the screen awake while `wanted`, where the browser allows it; asked anew when the page comes back into sight, since hiding it ends the lock. */
export function useWakeLock(wanted: boolean): void {
  useEffect(() => {
    if (!wanted || !('wakeLock' in navigator)) return undefined;
    let lock: WakeLockSentinel | undefined;
    let isOver = false;
    const ask = async (): Promise<void> => {
      if (document.visibilityState !== 'visible') return;
      try {
        const given = await navigator.wakeLock.request('screen');
        if (isOver) void given.release();
        else lock = given;
      } catch {
        // A low battery or a browser's rule: the screen may go dark, and the clocks go on right all the same.
      }
    };
    const onSight = (): void => void ask();
    void ask();
    document.addEventListener('visibilitychange', onSight);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', onSight);
      void lock?.release();
    };
  }, [wanted]);
}
