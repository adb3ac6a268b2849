import { expect } from 'vitest';
import type { Play } from '../../engine/index.ts';
import { demoPlaybook, ruleCodeOf } from '../../playbook/index.ts';
import { drawnField } from '../field-scene.ts';
import { textWidth } from './measure-text.ts';
import { type Page, type PageText, pageMargin } from './page.ts';
import type { SheetContent } from './play-sheet.ts';

const field = drawnField(ruleCodeOf(demoPlaybook).markings);

/** What the pages of a play say in tests: numbers from 10 on, worths against four schemes. */
export function contentOf(play: Play, more: Partial<SheetContent> = {}): SheetContent {
  return {
    play,
    set: '2-3-1',
    team: 'Tamarack Harriers',
    side: 'right',
    field,
    men: play.spots.map(({ id }, at) => ({ spot: id, number: at + 10 })),
    worths: [0.2, 0.35, 0.28, 0.4].map((mean, at) => ({
      scheme: `Scheme ${at}`,
      goals: { mean, low: mean - 0.03, high: mean + 0.03 },
    })),
    trials: 500,
    version: 'abc123',
    date: '1 March 2026',
    paper: 'letter',
    ...more,
  };
}

/** A play of so many steps, each like its first, a second after the one before. */
export function longPlay(play: Play, steps: number): Play {
  const [first] = play.beats;
  return {
    ...play,
    beats: Array.from({ length: steps }, (_, at) => ({
      ...first!,
      id: `step-${at}`,
      when: at === 0 ? { kind: 'start' } : { kind: 'call', beat: `step-${at - 1}`, seconds: 1 },
    })),
  };
}

export const textsOf = ({ marks }: Page): readonly PageText[] => marks.filter((mark) => mark.kind === 'text');

export const wordsOf = (page: Page): string =>
  textsOf(page)
    .map(({ text }) => text)
    .join(' ');

/** Every letter inside the margins of its paper, none smaller than `least` points, and no two lines on each other. */
export function expectReadable(page: Page, least: number): void {
  const lines = textsOf(page).map((line) => ({ ...boxOf(line), ...line }));
  for (const { text, size, left, right, top, bottom } of lines) {
    expect(size, text).toBeGreaterThanOrEqual(least);
    expect(left, text).toBeGreaterThanOrEqual(pageMargin - 1e-9);
    expect(right, text).toBeLessThanOrEqual(page.width - pageMargin + 0.5);
    expect(top, text).toBeGreaterThanOrEqual(pageMargin - 1e-9);
    expect(bottom, text).toBeLessThanOrEqual(page.height - pageMargin + 3);
  }
  const met = lines.flatMap((one, at) =>
    lines
      .slice(at + 1)
      .filter((two) => one.left < two.right && two.left < one.right && one.top < two.bottom && two.top < one.bottom)
      .map((two) => `${one.text} / ${two.text}`),
  );
  expect(met).toEqual([]);
}

/** Where letters put ink: capitals 0.73 of the size above the baseline, tails 0.21 below it (Inter's own measures). */
function boxOf({ at, text, size, weight, anchor }: PageText) {
  const width = textWidth(text, size, weight);
  const left = at.x - { start: 0, middle: 0.5, end: 1 }[anchor] * width;
  return { left, right: left + width, top: at.y - 0.73 * size, bottom: at.y + 0.21 * size };
}
