import { create } from 'zustand';

/** What the workbench is read on: as the device asks, paper, dark, or in full sun. */
export const lookNames = ['device', 'paper', 'dark', 'sun'] as const;
export type LookName = (typeof lookNames)[number];

interface LookState {
  /** What the coach chose. */
  readonly chosen: LookName;
  /** What is shown: never `device`. */
  readonly shown: Exclude<LookName, 'device'>;
  readonly choose: (name: LookName) => void;
}

const storageKey = 'sliderule:look';
const asksForDark = window.matchMedia('(prefers-color-scheme: dark)');

/** The look, kept on this machine. */
export const useLook = create<LookState>((set) => {
  const chosen = remembered();
  asksForDark.addEventListener('change', () => set(({ chosen: now }) => ({ shown: shownFor(now) })));
  return {
    chosen,
    shown: shownFor(chosen),
    choose: (name) => {
      remember(name);
      set({ chosen: name, shown: shownFor(name) });
    },
  };
});

/** Keeps the page in the look: the style sheet goes by one attribute of its root. */
export function applyLook(): void {
  const apply = (shown: string): void => {
    document.documentElement.dataset.look = shown;
  };
  apply(useLook.getState().shown);
  useLook.subscribe(({ shown }) => apply(shown));
}

function shownFor(name: LookName): Exclude<LookName, 'device'> {
  if (name !== 'device') return name;
  return asksForDark.matches ? 'dark' : 'paper';
}

// A browser may keep nothing for us (private window, storage off): the look is then chosen anew each time.
function remembered(): LookName {
  try {
    const kept = window.localStorage.getItem(storageKey);
    return lookNames.find((name) => name === kept) ?? 'device';
  } catch {
    return 'device';
  }
}

function remember(name: LookName): void {
  try {
    window.localStorage.setItem(storageKey, name);
  } catch {
    // Nothing is lost but the convenience.
  }
}
