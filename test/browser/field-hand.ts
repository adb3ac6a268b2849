import type { Locator, Page } from 'playwright-core';

/** Pixels of the page. */
export interface PagePoint {
  readonly x: number;
  readonly y: number;
}

/** A pointer on the field on which a play is written: it aims by what can be seen, in yards from the middle of the goal line. */
export interface FieldHand {
  /** The field itself. */
  readonly plane: Locator;
  /** Where a place of the field lies on the page as it is shown now. */
  readonly at: (x: number, y: number) => Promise<PagePoint>;
  /** The handle of a man, as a reader is told of it. */
  readonly man: (spot: string) => Locator;
  /** Where a man can be taken hold of. */
  readonly manAt: (spot: string) => Promise<PagePoint>;
  /** Presses at one point, moves to the other in some steps, and lets go unless `hold`. */
  readonly drag: (from: PagePoint, to: PagePoint, options?: { readonly hold?: boolean }) => Promise<void>;
  readonly dragMan: (spot: string, x: number, y: number) => Promise<void>;
  /** Drags one man onto another: a throw, when he has the ball. */
  readonly dragOnto: (spot: string, mate: string) => Promise<void>;
  readonly tap: (at: PagePoint) => Promise<void>;
}

/** The rule's crease, which the field shows. NFHS and NCAA rule 1: a radius of 9 feet. */
const creaseYards = 3;

export function fieldHand(page: Page, region = 'The field'): FieldHand {
  const plane = page.getByRole('region', { name: region, exact: true }).locator('svg[viewBox]:has(g.creaseArea)');
  const man = (spot: string) => plane.getByRole('button', { name: new RegExp(`^${spot}, `) });

  const at = async (x: number, y: number): Promise<PagePoint> => {
    await plane.scrollIntoViewIfNeeded();
    const box = await plane.locator('g.creaseArea circle').first().evaluate(boxOf);
    const yard = box.width / 2 / creaseYards;
    return { x: box.left + box.width / 2 + x * yard, y: box.top + box.height / 2 + y * yard };
  };
  const manAt = async (spot: string): Promise<PagePoint> => {
    await plane.scrollIntoViewIfNeeded();
    const box = await man(spot).locator('circle').first().evaluate(boxOf);
    return { x: box.left + box.width / 2, y: box.top + box.height / 2 };
  };
  const drag: FieldHand['drag'] = async (from, to, { hold = false } = {}) => {
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 6 });
    if (!hold) await page.mouse.up();
  };
  return {
    plane,
    at,
    man,
    manAt,
    drag,
    dragMan: async (spot, x, y) => drag(await manAt(spot), await at(x, y)),
    dragOnto: async (spot, mate) => drag(await manAt(spot), await manAt(mate)),
    tap: async ({ x, y }) => page.mouse.click(x, y),
  };
}

// Runs in the page.
function boxOf(element: Element): { left: number; top: number; width: number; height: number } {
  const { left, top, width, height } = element.getBoundingClientRect();
  return { left, top, width, height };
}
