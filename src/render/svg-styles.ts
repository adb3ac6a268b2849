import { type Palette, type PaletteName, palettes } from './palettes.ts';
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

/** The look of everything that a scene can hold. */
export type Styles = Readonly<Record<StyleName, SvgStyle>>;

/** Pixels a yard of field takes at the drawing's own size; a viewer scales it as a whole. */
export const pxPerYard = 21;

/** Width of the ring behind letters, px: a stroke along their outline, of which half lies outside. */
export const haloPx = 4;

/** First choice is what the reader's device reads best at small sizes. */
export const fontFamily = "system-ui, 'Segoe UI', Roboto, 'Helvetica Neue', Arial, 'DejaVu Sans', sans-serif";

/** The looks by palette; `paper` is what is printed. */
export const svgStyles: Readonly<Record<PaletteName, Styles>> = {
  paper: stylesOf(palettes.paper),
  dark: stylesOf(palettes.dark),
  sun: stylesOf(palettes.sun),
};

function stylesOf(palette: Palette): Styles {
  return {
    ...fieldStyles(palette),
    ...peopleStyles(palette),
    ...ballStyles(palette),
    ...wordStyles(palette),
    ...watchStyles(palette),
    ...chartStyles(palette),
    ...chartWordStyles(palette),
  };
}

function fieldStyles({ ink, quiet, page, grass, boxGrass, creaseGrass, paint, net, weight }: Palette) {
  return {
    turf: { fill: grass },
    boxArea: { fill: boxGrass },
    paint: { stroke: paint, widthPx: wide(2, weight) },
    midline: { stroke: paint, widthPx: wide(4, weight) },
    creaseArea: { fill: creaseGrass, stroke: paint, widthPx: wide(2, weight) },
    goalNet: { fill: net, stroke: quiet, widthPx: wide(1.5, weight) },
    goalLine: { stroke: ink, widthPx: wide(5, weight) },
    guide: { stroke: quiet, widthPx: wide(1.5, weight) },
    yardText: { fill: quiet, fontPx: 14, haloColour: grass },
    note: { fill: page },
  } as const;
}

function peopleStyles({ page, offense, defense, weight, faint }: Palette) {
  return {
    attacker: { fill: page, stroke: offense, widthPx: wide(3, weight) },
    carrier: { fill: offense, stroke: offense, widthPx: wide(3, weight) },
    beyond: { fill: offense },
    attackerText: { fill: offense, fontPx: 19, bold: true, haloColour: page },
    carrierText: { fill: page, fontPx: 19, bold: true, haloColour: offense },
    defenderHalo: { stroke: page, widthPx: wide(9, weight), opacity: faint.halo },
    defender: { stroke: defense, widthPx: wide(4.5, weight) },
    defenderText: { fill: defense, fontPx: 18, bold: true, haloColour: page },
    keeper: { fill: page, stroke: defense, widthPx: wide(3, weight) },
    keeperText: { fill: defense, fontPx: 16, bold: true },
    reach: { fill: defense, opacity: faint.reach },
    duty: { stroke: defense, widthPx: wide(1.5, weight), dashPx: [2, 4], opacity: faint.duty },
    dutyLock: { stroke: defense, widthPx: wide(2, weight), opacity: faint.duty },
    trail: { stroke: offense, widthPx: wide(2.25, weight), opacity: faint.trail },
  } as const;
}

function ballStyles({ ink, ball, ballEdge, weight, faint }: Palette) {
  return {
    ball: { fill: ball, stroke: ballEdge, widthPx: wide(2.5, weight) },
    run: { stroke: ink, widthPx: wide(2.75, weight) },
    runHead: { fill: ink },
    carry: { stroke: ink, widthPx: wide(2.75, weight) },
    pass: { stroke: ink, widthPx: wide(2.75, weight), dashPx: [9, 6] },
    passHead: { fill: ink },
    passPast: { stroke: ink, widthPx: wide(1.75, weight), dashPx: [5, 5], opacity: faint.passPast },
    shot: { stroke: ink, widthPx: wide(2.25, weight) },
    pick: { stroke: ink, widthPx: wide(3.5, weight) },
    seal: { stroke: ink, widthPx: wide(3.5, weight) },
    fake: { stroke: ink, widthPx: wide(2.25, weight), dashPx: [2, 4] },
  } as const;
}

function wordStyles({ ink, quiet, page }: Palette) {
  return {
    stepText: { fill: ink, fontPx: 16, bold: true, haloColour: page },
    heading: { fill: ink, fontPx: 25, bold: true },
    clock: { fill: ink, fontPx: 25, bold: true },
    sentence: { fill: ink, fontPx: 20 },
    small: { fill: quiet, fontPx: 16 },
  } as const;
}

/** What is told of a moment beside who stands where: what a shot is worth, which lane is safe, who is open, which read was seen. */
function watchStyles({ ink, page, grass, quiet, open, heat, weight, faint }: Palette) {
  return {
    heat: { fill: heat, opacity: faint.heat },
    heatLine: { stroke: heat, widthPx: wide(1, weight), opacity: 0.7 },
    heatText: { fill: quiet, fontPx: 14, haloColour: grass },
    laneSure: { stroke: open, widthPx: wide(4, weight) },
    laneFair: { stroke: open, widthPx: wide(2.25, weight) },
    laneUnder: { stroke: open, widthPx: wide(1.5, weight), dashPx: [4, 6] },
    laneText: { fill: open, fontPx: 16, bold: true, haloColour: page },
    openRing: { stroke: open, widthPx: wide(3.5, weight) },
    openText: { fill: open, fontPx: 17, bold: true, haloColour: page },
    readRing: { stroke: ink, widthPx: wide(2.25, weight), dashPx: [3, 5] },
    readText: { fill: ink, fontPx: 16, bold: true, haloColour: page },
    cueRing: { stroke: ink, widthPx: wide(3, weight) },
    cueLane: { stroke: ink, widthPx: wide(2.5, weight), dashPx: [12, 5, 2, 5] },
    cueRoom: { stroke: ink, widthPx: wide(1.75, weight), dashPx: [2, 5] },
    cueMove: { stroke: ink, widthPx: wide(4, weight) },
    cueMoveHead: { fill: ink },
  } as const;
}

/** The tempo chart: kinds of pass are told apart by their dashes, how much a window is worth by how dense its hatching is. */
function chartStyles({ ink, quiet, page, offense, ball, open, paint, weight }: Palette) {
  return {
    chartPage: { fill: page },
    beatBand: { fill: quiet, opacity: 0.1 },
    beatLine: { stroke: quiet, widthPx: wide(1, weight) },
    rowLine: { stroke: paint, widthPx: wide(1, weight) },
    triggerMark: { fill: page, stroke: ink, widthPx: wide(2, weight) },
    openTint1: { fill: open, opacity: 0.08 },
    openTint2: { fill: open, opacity: 0.14 },
    openTint3: { fill: open, opacity: 0.2 },
    openTint4: { fill: open, opacity: 0.28 },
    openHatch: { stroke: open, widthPx: wide(1, weight) },
    // The ball's own colour is too light to be seen on a light page by itself.
    ballCase: { stroke: ink, widthPx: wide(9, weight) },
    ballHeld: { stroke: ball, widthPx: wide(5, weight) },
    hopAdjacent: { stroke: ink, widthPx: wide(2.25, weight), dashPx: [7, 5] },
    hopSkip: { stroke: ink, widthPx: wide(3, weight), dashPx: [17, 6] },
    hopFeed: { stroke: ink, widthPx: wide(2.5, weight), dashPx: [1, 5] },
    hopShot: { stroke: ink, widthPx: wide(2, weight) },
    hopHead: { fill: ink },
    doing: { stroke: offense, widthPx: wide(2.5, weight) },
    doingHead: { fill: offense },
    doingWait: { stroke: offense, widthPx: wide(2, weight), dashPx: [1, 5] },
    readStub: { stroke: ink, widthPx: wide(1.5, weight), dashPx: [3, 4] },
    readEnd: { fill: page, stroke: ink, widthPx: wide(1.75, weight) },
    playhead: { stroke: ink, widthPx: wide(2, weight) },
    playheadTip: { fill: ink },
  } as const;
}

function chartWordStyles({ ink, quiet, page, offense, open }: Palette) {
  return {
    spotText: { fill: offense, fontPx: 18, bold: true },
    beatName: { fill: ink, fontPx: 16, bold: true, haloColour: page },
    triggerText: { fill: quiet, fontPx: 14, haloColour: page },
    timeText: { fill: quiet, fontPx: 14 },
    openWorth: { fill: open, fontPx: 14, bold: true, haloColour: page },
    hopWord: { fill: ink, fontPx: 14, bold: true, haloColour: page },
    doingWord: { fill: offense, fontPx: 14, haloColour: page },
    readCue: { fill: ink, fontPx: 14, haloColour: page },
    playheadText: { fill: ink, fontPx: 15, bold: true, haloColour: page },
  } as const;
}

// To a hundredth of a pixel, so that no last digit of a product gets into a file.
function wide(widthPx: number, weight: number): number {
  return Math.round(widthPx * weight * 100) / 100;
}
