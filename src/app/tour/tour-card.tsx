import { type ReactNode, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { Button } from '../controls/button.tsx';
import { addressOf } from '../shell/place.ts';
import { type Box, placeCard } from './place-card.ts';
import styles from './tour-card.module.css';
import { useTour } from './tour-state.ts';
import { tourSteps } from './tour-steps.ts';
import { useAnchorBox } from './use-anchor-box.ts';

/** One step of the first minute: a small card beside what it is about. The page under it stays in use. */
export default function TourCard({ step }: { readonly step: number }): ReactNode {
  const { isAsked, goTo, end } = useTour();
  const { anchor, title, text } = tourSteps[step]!;
  const anchorBox = useAnchorBox(anchor);
  const card = useRef<HTMLElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const place = usePlace(card, anchorBox, step);
  const leave = (): void => {
    const hadFocus = card.current?.contains(document.activeElement) ?? false;
    end();
    // Who was in the card goes on in the page, not at its beginning.
    if (hadFocus) document.getElementById('place')?.focus({ preventScroll: true });
  };
  useEscape(leave);
  useEffect(() => {
    if (isAsked) heading.current?.focus();
  }, [isAsked]);
  const isLast = step === tourSteps.length - 1;
  return (
    <>
      {anchorBox !== undefined && <div className={styles.ring} style={ringStyle(anchorBox)} aria-hidden="true" />}
      <section ref={card} className={styles.card} style={place} aria-label="Guided first minute">
        <div aria-live="polite">
          <p className={styles.count}>
            {step + 1} of {tourSteps.length}
          </p>
          <h2 ref={heading} tabIndex={-1} className={styles.title}>
            {title}
          </h2>
          <p>{text}</p>
        </div>
        <div className={styles.buttons}>
          <Button tone="plain" onClick={leave}>
            Leave
          </Button>
          <span className={styles.apart} />
          {step > 0 && <Button onClick={() => goTo(step - 1)}>Back</Button>}
          {isLast ? (
            <>
              <a className={styles.link} href={addressOf({ kind: 'playbook' })} onClick={end}>
                Start empty
              </a>
              <Button tone="main" onClick={leave}>
                Keep the demo
              </Button>
            </>
          ) : (
            <Button tone="main" onClick={() => goTo(step + 1)}>
              Next
            </Button>
          )}
        </div>
      </section>
    </>
  );
}

/** The card's place, measured before it is seen. */
function usePlace(
  card: { readonly current: HTMLElement | null },
  anchor: Box | undefined,
  step: number,
): Pick<Box, 'left' | 'top'> {
  const [place, setPlace] = useState<Pick<Box, 'left' | 'top'>>({ left: 0, top: 0 });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step has another text, and so another height
  useLayoutEffect(() => {
    const { width, height } = card.current?.getBoundingClientRect() ?? { width: 0, height: 0 };
    const screen = { width: document.documentElement.clientWidth, height: window.innerHeight };
    setPlace(placeCard(anchor, { width, height }, screen));
  }, [card, anchor, step]);
  return place;
}

/** Escape leaves, unless something that was opened over the page took it for itself. */
function useEscape(onEscape: () => void): void {
  const latest = useRef(onEscape);
  useEffect(() => {
    latest.current = onEscape;
  });
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && !event.defaultPrevented) latest.current();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}

function ringStyle({ left, top, width, height }: Box): Box {
  const room = 3;
  return { left: left - room, top: top - room, width: width + 2 * room, height: height + 2 * room };
}
