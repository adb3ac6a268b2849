import { useEffect, useState } from 'react';
import type { Box } from './place-card.ts';
import type { TourAnchor } from './tour-steps.ts';

/** Milliseconds after which it is looked again where the anchor is: a page also moves without telling. */
const lookAgain = 300;

/** Where on the screen the part with this `data-tour` is; undefined while it is not there or not to be seen. */
export function useAnchorBox(anchor: TourAnchor): Box | undefined {
  const [box, setBox] = useState<Box>();
  useEffect(() => {
    const look = (): void => setBox((before) => sameBox(before, boxOf(findAnchor(anchor))));
    findAnchor(anchor)?.scrollIntoView({ block: 'nearest', behavior: 'auto' });
    look();
    const timer = setInterval(look, lookAgain);
    window.addEventListener('resize', look);
    // Caught on its way down, so that whatever scrolls is heard.
    window.addEventListener('scroll', look, true);
    return () => {
      clearInterval(timer);
      window.removeEventListener('resize', look);
      window.removeEventListener('scroll', look, true);
    };
  }, [anchor]);
  return box;
}

function findAnchor(anchor: TourAnchor): Element | undefined {
  return [...document.querySelectorAll(`[data-tour="${anchor}"]`)].find((element) => boxOf(element) !== undefined);
}

function boxOf(element: Element | undefined): Box | undefined {
  if (element === undefined) return undefined;
  const { left, top, width, height } = element.getBoundingClientRect();
  return width > 0 && height > 0 ? { left, top, width, height } : undefined;
}

/** The box from before when nothing moved, so that nothing is drawn anew. */
function sameBox(before: Box | undefined, now: Box | undefined): Box | undefined {
  if (before === undefined || now === undefined) return now;
  const isSame =
    before.left === now.left && before.top === now.top && before.width === now.width && before.height === now.height;
  return isSame ? before : now;
}
