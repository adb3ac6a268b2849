import type { Point } from '../engine/index.ts';
import type { PaletteName } from './palettes.ts';
import type { PathStep, Primitive, SceneLayer, View } from './scene.ts';
import {
  haloPx,
  pxPerYard as ownPxPerYard,
  type SvgStyle,
  svgStyles,
  fontFamily as usualFontFamily,
} from './svg-styles.ts';

/**
 * What is used of a canvas's two-dimensional context. A browser's own context is one, and so is anything that writes down what is drawn.
 * Colours are texts; their types are as wide as the browser's, which also takes gradients.
 */
export interface Pen {
  fillStyle: unknown;
  strokeStyle: unknown;
  globalAlpha: number;
  lineWidth: number;
  lineCap: string;
  lineJoin: string;
  font: string;
  textAlign: string;
  textBaseline: string;
  save(): void;
  restore(): void;
  scale(x: number, y: number): void;
  beginPath(): void;
  closePath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  bezierCurveTo(ax: number, ay: number, bx: number, by: number, x: number, y: number): void;
  arc(x: number, y: number, radius: number, start: number, end: number): void;
  rect(x: number, y: number, width: number, height: number): void;
  clip(): void;
  fill(): void;
  stroke(): void;
  setLineDash(dash: number[]): void;
  fillText(content: string, x: number, y: number): void;
  strokeText(content: string, x: number, y: number): void;
}

export interface DrawOptions {
  readonly palette: PaletteName;
  /** Pixels of the page (not of the screen) that a yard takes, > 0. */
  readonly pxPerYard: number;
  /** Pixels of the screen to one of the page, > 0. */
  readonly devicePixelRatio: number;
  /** Where the view's left upper corner comes, px of the page. */
  readonly leftPx: number;
  readonly topPx: number;
  /** No letter is drawn smaller than this, px: on a small field it is larger beside its mark than on paper. */
  readonly leastFontPx: number;
  /** Lines are never drawn thinner than this share of their width on paper. */
  readonly leastLineShare: number;
  readonly fontFamily: string;
}

export const defaultDrawOptions: DrawOptions = {
  palette: 'paper',
  pxPerYard: ownPxPerYard,
  devicePixelRatio: 1,
  leftPx: 0,
  topPx: 0,
  leastFontPx: 9,
  leastLineShare: 0.45,
  fontFamily: usualFontFamily,
};

/**
 * Draws a scene on a canvas: the same shapes in the same order as `sceneToSvg`, cut off at the view's edge. Nothing is cleared before, so that
 * several layers can be drawn over each other. Throws a RangeError for a scale or a ratio that is no number above 0.
 */
export function drawScene(pen: Pen, scene: SceneLayer, options: Partial<DrawOptions> = {}): void {
  const chosen = { ...defaultDrawOptions, ...options };
  for (const name of ['pxPerYard', 'devicePixelRatio'] as const)
    if (!(chosen[name] > 0)) throw new RangeError(`invalid ${name}: ${chosen[name]} (expected more than 0)`);
  const { view, items } = scene;
  const frame = frameOf(view, chosen);
  pen.save();
  pen.scale(chosen.devicePixelRatio, chosen.devicePixelRatio);
  clipTo(pen, view, frame);
  pen.lineJoin = 'round';
  pen.textBaseline = 'alphabetic';
  for (let from = 0; from < items.length; ) {
    const to = endOfRun(items, from);
    drawRun(pen, items, from, to, frame);
    from = to;
  }
  pen.restore();
}

/** How yards become pixels of the page, and how much of their width and size lines and letters keep. */
interface Frame {
  readonly options: DrawOptions;
  readonly scale: number;
  /** Pixels at yard 0. */
  readonly originX: number;
  readonly originY: number;
  readonly lineShare: number;
  readonly fontShare: number;
}

function frameOf(view: View, options: DrawOptions): Frame {
  const { pxPerYard, leftPx, topPx, leastLineShare } = options;
  const share = pxPerYard / ownPxPerYard;
  return {
    options,
    scale: pxPerYard,
    originX: leftPx - view.left * pxPerYard,
    originY: topPx - view.top * pxPerYard,
    lineShare: Math.max(share, leastLineShare),
    fontShare: share,
  };
}

function clipTo(pen: Pen, { left, top, width, height }: View, { scale, originX, originY }: Frame): void {
  pen.beginPath();
  pen.rect(originX + left * scale, originY + top * scale, width * scale, height * scale);
  pen.clip();
}

// Neighbours of one style are drawn with one setting of the pen.
function endOfRun(items: readonly Primitive[], from: number): number {
  const { style } = items[from]!;
  let to = from + 1;
  while (to < items.length && items[to]!.style === style) to += 1;
  return to;
}

function drawRun(pen: Pen, items: readonly Primitive[], from: number, to: number, frame: Frame): void {
  const style = svgStyles[frame.options.palette][items[from]!.style];
  setStyle(pen, style, frame);
  // A filled disc hides the outline of the one below it, so that those are drawn one by one; all others share one path.
  const together = style.fill === undefined || style.stroke === undefined;
  if (together) pen.beginPath();
  for (let index = from; index < to; index += 1) {
    const item = items[index]!;
    if (item.kind === 'text') {
      drawText(pen, item, style, frame);
      continue;
    }
    if (!together) pen.beginPath();
    addShape(pen, item, frame);
    if (!together) paint(pen, style);
  }
  if (together && style.fontPx === undefined) paint(pen, style);
}

function paint(pen: Pen, { fill, stroke }: SvgStyle): void {
  if (fill !== undefined) pen.fill();
  if (stroke !== undefined) pen.stroke();
}

function setStyle(pen: Pen, style: SvgStyle, frame: Frame): void {
  pen.globalAlpha = style.opacity ?? 1;
  if (style.fill !== undefined) pen.fillStyle = style.fill;
  if (style.fontPx !== undefined) setFont(pen, style, frame);
  if (style.stroke === undefined) return;
  pen.strokeStyle = style.stroke;
  pen.lineWidth = (style.widthPx ?? 1) * frame.lineShare;
  pen.lineCap = 'round';
  pen.setLineDash((style.dashPx ?? []).map((length) => length * frame.lineShare));
}

function setFont(pen: Pen, style: SvgStyle, frame: Frame): void {
  const sizePx = fontSize(style, frame);
  pen.font = `${style.bold === true ? '700 ' : ''}${sizePx}px ${frame.options.fontFamily}`;
  if (style.haloColour === undefined) return;
  pen.strokeStyle = style.haloColour;
  pen.lineWidth = (haloPx * sizePx) / style.fontPx!;
  pen.setLineDash([]);
}

function fontSize({ fontPx = 0 }: SvgStyle, { fontShare, options }: Frame): number {
  // To a tenth of a pixel: a browser keeps the fonts that it has set before.
  return Math.max(options.leastFontPx, Math.round(fontPx * fontShare * 10) / 10);
}

// The baseline lies as far below the middle as in `svg.ts`.
function drawText(pen: Pen, item: Extract<Primitive, { kind: 'text' }>, style: SvgStyle, frame: Frame): void {
  const x = frame.originX + item.at.x * frame.scale;
  const y = frame.originY + item.at.y * frame.scale + fontSize(style, frame) * 0.36;
  pen.textAlign = item.anchor === 'middle' ? 'center' : item.anchor;
  if (style.haloColour !== undefined) pen.strokeText(item.text, x, y);
  pen.fillText(item.text, x, y);
}

function addShape(pen: Pen, item: Exclude<Primitive, { kind: 'text' }>, frame: Frame): void {
  switch (item.kind) {
    case 'path':
      for (const step of item.steps) addStep(pen, step, frame);
      return;
    case 'circle':
      addCircle(pen, item.centre, item.radius * frame.scale, frame);
      return;
    case 'line':
      moveTo(pen, item.from, frame);
      lineTo(pen, item.to, frame);
      return;
    default:
      exhaustive(item);
  }
}

// Without the move a line would lead to it from the shape before.
function addCircle(pen: Pen, centre: Point, radiusPx: number, { scale, originX, originY }: Frame): void {
  const x = originX + centre.x * scale;
  const y = originY + centre.y * scale;
  pen.moveTo(x + radiusPx, y);
  pen.arc(x, y, radiusPx, 0, 2 * Math.PI);
}

function addStep(pen: Pen, step: PathStep, frame: Frame): void {
  switch (step.kind) {
    case 'move':
      moveTo(pen, step.to, frame);
      return;
    case 'line':
      lineTo(pen, step.to, frame);
      return;
    case 'curve':
      curveTo(pen, step, frame);
      return;
    case 'close':
      pen.closePath();
      return;
    default:
      exhaustive(step);
  }
}

function moveTo(pen: Pen, { x, y }: Point, { scale, originX, originY }: Frame): void {
  pen.moveTo(originX + x * scale, originY + y * scale);
}

function lineTo(pen: Pen, { x, y }: Point, { scale, originX, originY }: Frame): void {
  pen.lineTo(originX + x * scale, originY + y * scale);
}

function curveTo(pen: Pen, step: Extract<PathStep, { kind: 'curve' }>, { scale, originX, originY }: Frame): void {
  const { control1: a, control2: b, to } = step;
  pen.bezierCurveTo(
    originX + a.x * scale,
    originY + a.y * scale,
    originX + b.x * scale,
    originY + b.y * scale,
    originX + to.x * scale,
    originY + to.y * scale,
  );
}

function exhaustive(item: never): never {
  throw new TypeError(`unknown shape: ${JSON.stringify(item)}`);
}
