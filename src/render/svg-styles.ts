import type { StyleName } from './scene.ts';

/**
 * How each thing looks, in pixels of the drawing's own size. Colour is never the only carrier: fill against outline,
 * solid against dashed against zigzag, circle against cross, and letter weight tell the same things in black and white.
 */
export interface SvgStyle {
  readonly fill?: string;
  readonly stroke?: string;
  readonly widthPx?: number;
  readonly dashPx?: readonly number[];
  readonly opacity?: number;
  readonly fontPx?: number;
  readonly bold?: boolean;
  /** A ring of this colour behind letters, so that lines under them do not cut them; on a disc, the disc's own. */
  readonly haloColour?: string;
}

/** Pixels a yard of field takes at the drawing's own size; a viewer scales it as a whole. */
export const pxPerYard = 21;

/** First choice is what the reader's device reads best at small sizes. */
export const fontFamily = "system-ui, 'Segoe UI', Roboto, 'Helvetica Neue', Arial, 'DejaVu Sans', sans-serif";

const ink = '#16263a';
const offense = '#1c4a7d';
const defense = '#a33a16';
const grass = '#eaf1ea';
const boxGrass = '#e1ebe1';
const paint = '#9db5a3';
const quiet = '#5d6f66';
const paper = '#ffffff';

export const svgStyles: Readonly<Record<StyleName, SvgStyle>> = {
  turf: { fill: grass },
  boxArea: { fill: boxGrass },
  paint: { stroke: paint, widthPx: 2 },
  midline: { stroke: paint, widthPx: 4 },
  creaseArea: { fill: '#d3e2d6', stroke: paint, widthPx: 2 },
  goalNet: { fill: paper, stroke: quiet, widthPx: 1.5 },
  goalLine: { stroke: ink, widthPx: 5 },
  guide: { stroke: quiet, widthPx: 1.5 },
  yardText: { fill: quiet, fontPx: 14, haloColour: grass },
  attacker: { fill: paper, stroke: offense, widthPx: 3 },
  carrier: { fill: offense, stroke: offense, widthPx: 3 },
  beyond: { fill: offense },
  attackerText: { fill: offense, fontPx: 19, bold: true, haloColour: paper },
  carrierText: { fill: paper, fontPx: 19, bold: true, haloColour: offense },
  defenderHalo: { stroke: paper, widthPx: 9, opacity: 0.75 },
  defender: { stroke: defense, widthPx: 4.5 },
  defenderText: { fill: defense, fontPx: 18, bold: true, haloColour: paper },
  keeper: { fill: paper, stroke: defense, widthPx: 3 },
  keeperText: { fill: defense, fontPx: 16, bold: true },
  reach: { fill: defense, opacity: 0.1 },
  ball: { fill: '#f2b705', stroke: ink, widthPx: 2.5 },
  run: { stroke: ink, widthPx: 2.75 },
  runHead: { fill: ink },
  trail: { stroke: offense, widthPx: 2.25, opacity: 0.55 },
  carry: { stroke: ink, widthPx: 2.75 },
  pass: { stroke: ink, widthPx: 2.75, dashPx: [9, 6] },
  passHead: { fill: ink },
  passPast: { stroke: ink, widthPx: 1.75, dashPx: [5, 5], opacity: 0.5 },
  shot: { stroke: ink, widthPx: 2.25 },
  pick: { stroke: ink, widthPx: 3.5 },
  seal: { stroke: ink, widthPx: 3.5 },
  fake: { stroke: ink, widthPx: 2.25, dashPx: [2, 4] },
  duty: { stroke: defense, widthPx: 1.5, dashPx: [2, 4], opacity: 0.75 },
  dutyLock: { stroke: defense, widthPx: 2, opacity: 0.75 },
  note: { fill: paper },
  stepText: { fill: ink, fontPx: 16, bold: true, haloColour: paper },
  heading: { fill: ink, fontPx: 25, bold: true },
  clock: { fill: ink, fontPx: 25, bold: true },
  sentence: { fill: ink, fontPx: 20 },
  small: { fill: quiet, fontPx: 16 },
};
