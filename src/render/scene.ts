import type { Point } from '../engine/index.ts';

/**
 * A drawing as plain data, in the field's own yards (docs/units-and-frames.md): x to the right, y down the page, goal at the top.
 * Screen, print and film all draw this; how wide a line is and how large a letter is the drawer's business (`svg.ts`).
 */
export interface Scene extends SceneLayer {
  /** What the picture is, in a few words: the title a screen reader speaks. */
  readonly title: string;
  /** What can be seen in it, in sentences, for who cannot see it. */
  readonly description: string;
}

/** What is drawn, without its words: one of several sheets that lie over each other, or a whole scene. */
export interface SceneLayer {
  /** The part of the plane that is shown. */
  readonly view: View;
  /** Drawn in this order, later ones on top. */
  readonly items: readonly Primitive[];
}

/** A rectangle of the plane: `left` and `top` are its least x and y, yards. */
export interface View {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** What a line, an area or a letter stands for. The drawer gives each one its look, and each look is told apart without colour. */
export const styleNames = [
  'turf',
  'boxArea',
  'paint',
  'midline',
  'creaseArea',
  'goalNet',
  'goalLine',
  'guide',
  'yardText',
  'attacker',
  'carrier',
  'beyond',
  'attackerText',
  'carrierText',
  'defenderHalo',
  'defender',
  'defenderText',
  'keeper',
  'keeperText',
  'reach',
  'ball',
  'run',
  'runHead',
  'trail',
  'carry',
  'pass',
  'passHead',
  'passPast',
  'shot',
  'pick',
  'seal',
  'fake',
  'duty',
  'dutyLock',
  'note',
  'stepText',
  'heading',
  'clock',
  'sentence',
  'small',
  'heat',
  'heatLine',
  'heatText',
  'laneSure',
  'laneFair',
  'laneUnder',
  'laneText',
  'openRing',
  'openText',
  'readRing',
  'readText',
  'cueRing',
  'cueLane',
  'cueRoom',
  'cueMove',
  'cueMoveHead',
  'chartPage',
  'beatBand',
  'beatLine',
  'rowLine',
  'spotText',
  'beatName',
  'triggerText',
  'triggerMark',
  'timeText',
  'openTint1',
  'openTint2',
  'openTint3',
  'openTint4',
  'openHatch',
  'openWorth',
  'ballCase',
  'ballHeld',
  'hopAdjacent',
  'hopSkip',
  'hopFeed',
  'hopShot',
  'hopHead',
  'hopWord',
  'doing',
  'doingHead',
  'doingWait',
  'doingWord',
  'readStub',
  'readEnd',
  'readCue',
  'playhead',
  'playheadTip',
  'playheadText',
] as const;
export type StyleName = (typeof styleNames)[number];

/** One step of an outline, yards. */
export type PathStep =
  | { readonly kind: 'move' | 'line'; readonly to: Point }
  | { readonly kind: 'curve'; readonly control1: Point; readonly control2: Point; readonly to: Point }
  | { readonly kind: 'close' };

export type Primitive =
  | { readonly kind: 'path'; readonly style: StyleName; readonly steps: readonly PathStep[] }
  | { readonly kind: 'circle'; readonly style: StyleName; readonly centre: Point; readonly radius: number }
  | { readonly kind: 'line'; readonly style: StyleName; readonly from: Point; readonly to: Point }
  | {
      readonly kind: 'text';
      readonly style: StyleName;
      /** Where the line's middle height meets its anchor. */
      readonly at: Point;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly text: string;
    };

export function circle(style: StyleName, centre: Point, radius: number): Primitive {
  return { kind: 'circle', style, centre, radius };
}

export function line(style: StyleName, from: Point, to: Point): Primitive {
  return { kind: 'line', style, from, to };
}

export function text(
  style: StyleName,
  at: Point,
  content: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
): Primitive {
  return { kind: 'text', style, at, anchor, text: content };
}

/** Straight pieces from point to point; fewer than two points draw nothing. */
export function polyline(style: StyleName, points: readonly Point[]): readonly Primitive[] {
  if (points.length < 2) return [];
  return [{ kind: 'path', style, steps: straightSteps(points) }];
}

export function polygon(style: StyleName, points: readonly Point[]): Primitive {
  return { kind: 'path', style, steps: [...straightSteps(points), { kind: 'close' }] };
}

export function rectangle(style: StyleName, left: number, top: number, right: number, bottom: number): Primitive {
  return polygon(style, [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ]);
}

function straightSteps(points: readonly Point[]): readonly PathStep[] {
  return points.map((to, index) => ({ kind: index === 0 ? 'move' : 'line', to }));
}
