import { type ReactNode, useEffect, useSyncExternalStore } from 'react';
import { useDesk } from '../shell/desk.tsx';
import type { Place } from '../shell/place.ts';
import { TourCard } from './tour-card.tsx';
import { useTour } from './tour-state.ts';

/** The guided first minute: offered at a coach's first visit, and shown at the Play place while it lasts. */
export function GuidedMinute({ place }: { readonly place: Place }): ReactNode {
  const { store } = useDesk();
  const isFirstVisit = useSyncExternalStore(store.subscribe, () => store.isFirstVisit);
  const step = useTour((state) => state.step);
  const offer = useTour((state) => state.offer);
  useEffect(() => {
    if (isFirstVisit) offer();
  }, [isFirstVisit, offer]);
  return place.kind === 'play' && step !== undefined ? <TourCard step={step} /> : null;
}
