import { create } from 'zustand';
import { tourSteps } from './tour-steps.ts';

interface TourState {
  /** The step that is shown; undefined when none is. */
  readonly step: number | undefined;
  /** It was asked for, and did not come by itself: the keyboard goes there. */
  readonly isAsked: boolean;
  /** Begins because the coach wants it. */
  readonly start: () => void;
  /** Begins by itself, unless it was seen on this device. */
  readonly offer: () => void;
  readonly goTo: (step: number) => void;
  /** Ends it, and remembers that on this device. */
  readonly end: () => void;
}

const storageKey = 'sliderule:first-minute';

/** Where the guided first minute stands. */
export const useTour = create<TourState>((set) => ({
  step: undefined,
  isAsked: false,
  start: () => set({ step: 0, isAsked: true }),
  offer: () => {
    if (!wasSeen()) set({ step: 0, isAsked: false });
  },
  goTo: (step) => set({ step: Math.min(Math.max(step, 0), tourSteps.length - 1) }),
  end: () => {
    remember();
    set({ step: undefined });
  },
}));

// A browser may keep nothing for us (private window, storage off): the minute is then offered again.
function wasSeen(): boolean {
  try {
    return window.localStorage.getItem(storageKey) === 'seen';
  } catch {
    return false;
  }
}

function remember(): void {
  try {
    window.localStorage.setItem(storageKey, 'seen');
  } catch {
    // Nothing is lost but the convenience.
  }
}
