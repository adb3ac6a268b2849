import type { Point } from '../engine/index.ts';
import type { PaletteName } from './palettes.ts';
import type { PathStep, Primitive, Scene, StyleName, View } from './scene.ts';
import { fontFamily, haloPx, pxPerYard, type Styles, type SvgStyle, svgStyles } from './svg-styles.ts';

/**
 * One scene as a whole SVG file: it needs no style sheet, no font and no script, and carries its own title and description.
 * Coordinates are rounded to a tenth of a pixel, so that the same scene gives the same text on every machine.
 */
export function sceneToSvg(scene: Scene, palette: PaletteName = 'paper'): string {
  const { view } = scene;
  const width = px(view.width * pxPerYard);
  const height = px(view.height * pxPerYard);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${escapeXml(scene.title)}" font-family="${fontFamily}">`,
    `<title>${escapeXml(scene.title)}</title>`,
    `<desc>${escapeXml(scene.description)}</desc>`,
    marksToSvg(scene.items, view, palette),
    '</svg>',
    '',
  ].join('\n');
}

/** Shapes alone, as the inside of an SVG element whose upper left corner is the view's and whose unit is `1 / pxPerYard` yards. */
export function marksToSvg(items: readonly Primitive[], view: View, palette: PaletteName = 'paper'): string {
  const styles = svgStyles[palette];
  return groupByStyle(items)
    .map(({ style, items: shapes }) => groupToSvg(style, shapes, view, styles))
    .join('\n');
}

/**
 * The same for print, near black on white. The ring behind letters is drawn as letters of its own under them: what makes a PDF of an SVG knows no
 * order of painting.
 */
export function printedMarksToSvg(items: readonly Primitive[], view: View): string {
  const styles = svgStyles.sun;
  return groupByStyle(items)
    .flatMap(({ style, items: shapes }) => {
      const { haloColour, ...bare } = styles[style];
      if (haloColour === undefined) return [groupToSvg(style, shapes, view, styles)];
      const ring: SvgStyle = { ...bare, fill: haloColour, stroke: haloColour, widthPx: haloPx };
      return [ring, bare].map((one) => groupToSvg(style, shapes, view, { ...styles, [style]: one }));
    })
    .join('\n');
}

/** Text made safe for XML content and attributes; characters that XML cannot hold are dropped. */
export function escapeXml(content: string): string {
  return [...content]
    .filter(isXmlCharacter)
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

// XML 1.0 section 2.2, "Characters": no control characters but tab and line ends, no lone surrogates, two noncharacters.
function isXmlCharacter(letter: string): boolean {
  const code = letter.codePointAt(0) ?? 0;
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
  return (code < 0xd800 || code > 0xdfff) && code !== 0xfffe && code !== 0xffff;
}

export interface StyleGroup {
  readonly style: StyleName;
  readonly items: readonly Primitive[];
}

/** Neighbours of one style share one group: their order is kept, and the drawer changes style as seldom as it can. */
export function groupByStyle(items: readonly Primitive[]): readonly StyleGroup[] {
  const groups: { style: StyleName; items: Primitive[] }[] = [];
  for (const item of items) {
    const last = groups.at(-1);
    if (last !== undefined && last.style === item.style) last.items.push(item);
    else groups.push({ style: item.style, items: [item] });
  }
  return groups;
}

function groupToSvg(style: StyleName, items: readonly Primitive[], view: View, styles: Styles): string {
  const shapes = items.map((item) => `  ${shapeToSvg(item, styles[style], view)}`);
  return [`<g class="${style}"${styleAttributes(styles[style])}>`, ...shapes, '</g>'].join('\n');
}

function styleAttributes(style: SvgStyle): string {
  const pairs: readonly (readonly [string, string | undefined])[] = [
    ['fill', style.fill ?? 'none'],
    ['stroke', style.haloColour ?? style.stroke],
    ['stroke-width', style.haloColour === undefined ? style.widthPx?.toString() : String(haloPx)],
    ['paint-order', style.haloColour === undefined ? undefined : 'stroke'],
    ['stroke-dasharray', style.dashPx?.join(' ')],
    ['stroke-linecap', style.stroke === undefined ? undefined : 'round'],
    ['stroke-linejoin', style.stroke === undefined && style.haloColour === undefined ? undefined : 'round'],
    ['opacity', style.opacity?.toString()],
    ['font-size', style.fontPx?.toString()],
    ['font-weight', style.bold === true ? '700' : undefined],
  ];
  return pairs.map(([name, value]) => (value === undefined ? '' : ` ${name}="${value}"`)).join('');
}

function shapeToSvg(item: Primitive, style: SvgStyle, view: View): string {
  switch (item.kind) {
    case 'path':
      return `<path d="${item.steps.map((step) => stepToSvg(step, view)).join('')}"/>`;
    case 'circle':
      return `<circle cx="${px(x(item.centre, view))}" cy="${px(y(item.centre, view))}" r="${px(item.radius * pxPerYard)}"/>`;
    case 'line':
      return `<line x1="${px(x(item.from, view))}" y1="${px(y(item.from, view))}" x2="${px(x(item.to, view))}" y2="${px(y(item.to, view))}"/>`;
    case 'text':
      return textToSvg(item, style, view);
    default:
      return exhaustive(item);
  }
}

// The baseline is set by hand: dominant-baseline is read differently by different drawers. A capital is .72 of the size high.
function textToSvg(item: Extract<Primitive, { kind: 'text' }>, style: SvgStyle, view: View): string {
  const drop = (style.fontPx ?? 0) * 0.36;
  const anchor = item.anchor === 'start' ? '' : ` text-anchor="${item.anchor}"`;
  return `<text x="${px(x(item.at, view))}" y="${px(y(item.at, view) + drop)}"${anchor}>${escapeXml(item.text)}</text>`;
}

function stepToSvg(step: PathStep, view: View): string {
  switch (step.kind) {
    case 'move':
      return `M${pair(step.to, view)}`;
    case 'line':
      return `L${pair(step.to, view)}`;
    case 'curve':
      return `C${pair(step.control1, view)} ${pair(step.control2, view)} ${pair(step.to, view)}`;
    case 'close':
      return 'Z';
    default:
      return exhaustive(step);
  }
}

function pair(point: Point, view: View): string {
  return `${px(x(point, view))} ${px(y(point, view))}`;
}

function x(point: Point, view: View): number {
  return (point.x - view.left) * pxPerYard;
}

function y(point: Point, view: View): number {
  return (point.y - view.top) * pxPerYard;
}

function px(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing cannot hold the coordinate ${value}`);
  // Adding 0 turns -0 into 0.
  return String(Math.round(value * 10) / 10 + 0);
}

function exhaustive(item: never): never {
  throw new TypeError(`unknown shape: ${JSON.stringify(item)}`);
}
