import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { type Page, type PagePicture, pageToSvg, playSheet } from '../../render/index.ts';
import { opponentContent, printedOpponent, sheetContent } from '../../teach/index.ts';

const wishes = { side: 'right', paper: 'letter', date: '1 March 2026', withNames: false } as const;
/** Pixels a point. */
const sharpness = 4;

interface GreyPage {
  /** How dark the page is at a point of it: 0 for white, 1 for black. */
  darkAt(x: number, y: number): number;
}

/** What a printer without colours puts on paper: the light of each pixel (ITU-R BT.601: .299 red, .587 green, .114 blue). */
function inGrey(page: Page): GreyPage {
  const image = new Resvg(pageToSvg(page), { fitTo: { mode: 'width', value: page.width * sharpness } }).render();
  const { pixels, width } = image;
  return {
    darkAt: (x, y) => {
      const at = 4 * (Math.round(y * sharpness) * width + Math.round(x * sharpness));
      return 1 - (0.299 * pixels[at]! + 0.587 * pixels[at + 1]! + 0.114 * pixels[at + 2]!) / 255;
    },
  };
}

/** A place of the field on the page: a picture is as large as fits, in the middle of its place. */
function onPage({ scene: { view }, left, top, width, height }: PagePicture) {
  const scale = Math.min(width / view.width, height / view.height);
  const [dx, dy] = [left + (width - scale * view.width) / 2, top + (height - scale * view.height) / 2];
  return {
    scale,
    place: ({ x, y }: Point) => ({ x: dx + (x - view.left) * scale, y: dy + (y - view.top) * scale }),
  };
}

const picturesOf = (page: Page): readonly PagePicture[] => page.marks.filter((mark) => mark.kind === 'picture');
const dark = 0.45;

/** How often the way from one point to another goes from white to dark. */
function strokesBetween(grey: GreyPage, from: Point, to: Point): number {
  const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) * sharpness);
  let strokes = 0;
  let wasDark = false;
  for (let step = 0; step <= steps; step += 1) {
    const share = step / steps;
    const isDark = grey.darkAt(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share) > dark;
    if (isDark && !wasDark) strokes += 1;
    wasDark = isDark;
  }
  return strokes;
}

/** Shares of a circle round a point that are dark. */
function darkRound(grey: GreyPage, at: Point, radius: number): number {
  const angles = Array.from({ length: 72 }, (_, step) => (step * Math.PI) / 36);
  const found = angles.filter(
    (angle) => grey.darkAt(at.x + radius * Math.cos(angle), at.y + radius * Math.sin(angle)) > dark,
  );
  return found.length / angles.length;
}

const circlesOf = ({ scene }: PagePicture) =>
  scene.items.filter((item) => item.kind === 'circle' && (item.style === 'attacker' || item.style === 'carrier'));

/** Where a man stands in a picture. */
function spotIn({ scene }: PagePicture, spot: string): Point {
  const letters = scene.items.find((item) => item.kind === 'text' && item.text === spot);
  if (letters?.kind !== 'text') throw new RangeError(`no ${spot} in the picture`);
  return letters.at;
}

/** The points of every line of a style, in the order in which they are drawn. */
function linesOf({ scene }: PagePicture, style: 'run' | 'carry'): readonly (readonly Point[])[] {
  return scene.items.flatMap((item) => {
    if (item.style !== style) return [];
    if (item.kind === 'line') return [[item.from, item.to]];
    return item.kind === 'path' ? [item.steps.flatMap((step) => (step.kind === 'close' ? [] : [step.to]))] : [];
  });
}

describe('a page that is printed in grey', () => {
  const play = toEnginePlay(demoPlaybook, 'lantern');
  const sheet = playSheet(sheetContent(demoPlaybook, 'lantern', wishes));
  const [first, , third, fourth] = picturesOf(sheet);
  const grey = inGrey(sheet);

  it('has a ring round each man of the offense, and a cross of two strokes for each of the defense', () => {
    const against = printedOpponent(opponentContent(demoPlaybook, 'copper-falls', wishes)).pages[0]!;
    const [theirs] = picturesOf(against);
    const { scale, place } = onPage(theirs!);
    const cross = inGrey(against);
    const { schemes } = opponentContent(demoPlaybook, 'copper-falls', wishes);
    for (const { home } of schemes[0]!.men) {
      expect(cross.darkAt(place(home).x, place(home).y)).toBeGreaterThan(dark);
      // Four arms and white between them.
      expect(darkRound(cross, place(home), 0.45 * scale)).toBeGreaterThan(0.1);
      expect(darkRound(cross, place(home), 0.45 * scale)).toBeLessThan(0.6);
    }
    const ours = onPage(first!);
    const ring = circlesOf(first!);
    expect(ring).toHaveLength(play.spots.length);
    for (const circle of ring) {
      if (circle.kind !== 'circle') continue;
      const { centre, radius } = circle;
      expect(darkRound(grey, ours.place(centre), radius * ours.scale)).toBeGreaterThan(0.75);
    }
  });

  it('tells a pass by its dashes from a run, which is one line', () => {
    const pass = onPage(first!);
    const [start, end] = [spotIn(first!, 'TR'), spotIn(first!, 'TL')].map(pass.place);
    const inset = 1.6 * pass.scale;
    const dashes = strokesBetween(grey, { x: start!.x - inset, y: start!.y }, { x: end!.x + inset, y: end!.y });
    expect(dashes).toBeGreaterThan(4);
    const run = linesOf(third!, 'run')[0]!;
    const { place } = onPage(third!);
    expect(strokesBetween(grey, place(run[0]!), place(run[1]!))).toBe(1);
  });

  it('tells a carry by its zigzag from a run: its line leaves the straight way to both sides', () => {
    const carry = linesOf(fourth!, 'carry');
    const points = carry.flat();
    const [from, to] = [points[0]!, points.at(-1)!];
    const sides = points.map(({ x, y }) => Math.sign((to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x)));
    expect(new Set(sides.filter((side) => side !== 0)).size).toBe(2);
    const { place } = onPage(fourth!);
    for (const point of points.slice(1, -1)) {
      expect(grey.darkAt(place(point).x, place(point).y)).toBeGreaterThan(dark);
    }
  });
});
