import { type RefObject, useCallback, useEffect, useRef, useState } from 'react';

/** The widths at which what asks for something on the stage can stand below it: those of the style sheets with the words under the field. */
const under = '(max-width: 72rem)';

export interface StageInView {
  readonly stage: RefObject<HTMLElement | null>;
  /** Brings the stage to the top of the page, once what was asked for is on it. The focus stays where it is. */
  readonly bring: () => void;
}

/** Shows the coach the stage when something is asked for from below it; where it stands beside all else, and while it is in view, nothing moves. */
export function useStageInView(): StageInView {
  const stage = useRef<HTMLElement>(null);
  const [asked, setAsked] = useState(0);
  useEffect(() => {
    if (asked === 0 || stage.current === null || !window.matchMedia(under).matches) return;
    if (isInView(stage.current)) return;
    const isCalm = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
    stage.current.scrollIntoView({ block: 'start', behavior: isCalm ? 'instant' : 'smooth' });
  }, [asked]);
  return { stage, bring: useCallback(() => setAsked((times) => times + 1), []) };
}

// Its upper half is the field: seen whole, or the page has to move.
function isInView(stage: HTMLElement): boolean {
  const { top } = stage.getBoundingClientRect();
  return top >= 0 && top < window.innerHeight / 2;
}
