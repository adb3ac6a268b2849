import type { CDPSession, Locator, Page } from 'playwright-core';
import type { PagePoint } from './field-hand.ts';

/** Fingers on the screen, as the browser's own tools put them there. */
export interface Fingers {
  /** Puts fingers down at these points, or moves those that are down there. */
  readonly down: (...points: readonly PagePoint[]) => Promise<void>;
  readonly move: (...points: readonly PagePoint[]) => Promise<void>;
  readonly up: () => Promise<void>;
  /** One finger from one point to another, in some steps. */
  readonly drag: (from: PagePoint, to: PagePoint) => Promise<void>;
}

export async function fingersOn(page: Page): Promise<Fingers> {
  const tools: CDPSession = await page.context().newCDPSession(page);
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: readonly PagePoint[]) =>
    tools
      .send('Input.dispatchTouchEvent', { type, touchPoints: points.map(({ x, y }, id) => ({ x, y, id })) })
      .then(() => undefined);
  const steps = 6;
  return {
    down: (...points) => send('touchStart', points),
    move: (...points) => send('touchMove', points),
    up: () => send('touchEnd', []),
    drag: async (from, to) => {
      await send('touchStart', [from]);
      for (let step = 1; step <= steps; step++) {
        const share = step / steps;
        await send('touchMove', [{ x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share }]);
      }
      await send('touchEnd', []);
    },
  };
}

/**
 * Taps what has to be scrolled to, once the page has been drawn where it was scrolled: a touch that is sent in the same moment goes to what lay
 * there before, as no finger's would.
 */
export async function tapWhenStill(target: Locator): Promise<void> {
  await target.scrollIntoViewIfNeeded();
  await target.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(resolve, 50)))),
  );
  await target.tap();
}
