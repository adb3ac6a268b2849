import { lazy, type ReactNode, Suspense, useEffect, useSyncExternalStore } from 'react';
import { useDesk } from '../shell/desk.tsx';
import type { Place } from '../shell/place.ts';
import { useTour } from './tour-state.ts';

// Most visits are not the first.
const TourCard = lazy(() => import('./tour-card.tsx'));

/** The guided first minute: offered at a coach's first visit, and shown at the Play place while it lasts. */
export function GuidedMinute({ place }: { readonly place: Place }): ReactNode {
  const { store } = useDesk();
  const isFirstVisit = useSyncExternalStore(store.subscribe, () => store.isFirstVisit);
  const step = useTour((state) => state.step);
  const offer = useTour((state) => state.offer);
  useEffect(() => {
    if (isFirstVisit) offer();
  }, [isFirstVisit, offer]);
  if (place.kind !== 'play' || step === undefined) return null;
  return (
    <Suspense fallback={null}>
      <TourCard step={step} />
    </Suspense>
  );
}
