import type { Primitive } from '../render/index.ts';
import { unitsPerYard } from './man-mark.ts';
import { svgElement } from './svg-element.ts';

/** The marks of what there was to see, drawn as everywhere else; letters are none of them. */
export function cueShapes(marks: readonly Primitive[]): readonly SVGElement[] {
  return marks.map(shapeOf).filter((shape) => shape !== null);
}

function shapeOf(mark: Primitive): SVGElement | null {
  if (mark.kind === 'circle') {
    const { x, y } = mark.centre;
    return svgElement('circle', mark.style, { cx: units(x), cy: units(y), r: units(mark.radius) });
  }
  if (mark.kind === 'line') {
    const { from, to } = mark;
    return svgElement('line', mark.style, { x1: units(from.x), y1: units(from.y), x2: units(to.x), y2: units(to.y) });
  }
  return mark.kind === 'path' ? svgElement('path', mark.style, { d: mark.steps.map(stepText).join('') }) : null;
}

type Path = Extract<Primitive, { kind: 'path' }>;

function stepText(step: Path['steps'][number]): string {
  const at = ({ x, y }: { readonly x: number; readonly y: number }): string => `${units(x)} ${units(y)}`;
  if (step.kind === 'close') return 'Z';
  if (step.kind === 'curve') return `C${at(step.control1)} ${at(step.control2)} ${at(step.to)}`;
  return `${step.kind === 'move' ? 'M' : 'L'}${at(step.to)}`;
}

function units(yards: number): number {
  return Math.round(yards * unitsPerYard * 100) / 100;
}
