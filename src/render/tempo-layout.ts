import type { SpotId } from '../engine/index.ts';
import type { View } from './scene.ts';
import type { ChartBeat, TempoChart } from './tempo-chart.ts';
import { triggerName } from './tempo-words.ts';

/** How large a chart is drawn, in the unit of its plane: `pxPerYard` pixels each at the drawing's own size. */
export interface TempoSizes {
  /** A second to the right. */
  readonly second: number;
  /** From one row to the next. */
  readonly row: number;
}

/** 95 px a second and 55 px a row: two halves of a row can be taken hold of apart. */
export const defaultTempoSizes: TempoSizes = { second: 4.5, row: 2.6 };

/** Where a beat's name stands in the head. */
export interface BeatLabel {
  readonly beat: ChartBeat;
  readonly x: number;
  /** Middle height of its name; what starts it is written below. */
  readonly y: number;
  readonly width: number;
}

/** Where everything of a chart lies in its plane: x to the right, y down, (0, 0) the left upper corner. */
export interface TempoLayout {
  readonly view: View;
  readonly sizes: TempoSizes;
  /** Left and right end of time. */
  readonly left: number;
  readonly right: number;
  /** Middle height of the strip in which the goal stands. */
  readonly goalY: number;
  /** Upper edge of the first row and lower edge of the last. */
  readonly top: number;
  readonly bottom: number;
  readonly labels: readonly BeatLabel[];
}

/** Room for the spots' names, and right of the last second. */
const leftRoom = 2.7;
const rightRoom = 1.2;
const goalStrip = 1.7;
/** Room for a beat's name and what starts it. */
const labelHeight = 1.75;
/** Room for the seconds' figures. */
const footHeight = 1.3;
/** Width of a letter of a beat's name and of what starts it. */
const nameLetter = 0.47;
const triggerLetter = 0.37;
const labelGap = 0.4;

export function layOutTempo(chart: TempoChart, sizes: Partial<TempoSizes> = {}): TempoLayout {
  const chosen = { ...defaultTempoSizes, ...sizes };
  const left = leftRoom;
  const right = left + chart.end * chosen.second;
  const { labels, tiers } = placeBeatLabels(chart.beats, left, chosen.second);
  const top = goalStrip + Math.max(1, tiers) * labelHeight;
  const bottom = top + chart.rows.length * chosen.row;
  return {
    view: { left: 0, top: 0, width: right + rightRoom, height: bottom + footHeight },
    sizes: chosen,
    left,
    right,
    goalY: goalStrip / 2,
    top,
    bottom,
    labels,
  };
}

/** The length of a second with which a chart is as wide as this, in the unit of its plane; never less than `least`. */
export function secondToFit(chart: TempoChart, width: number, least = 2.2): number {
  return Math.max(least, (width - leftRoom - rightRoom) / chart.end);
}

export function timeToX({ left, sizes }: TempoLayout, time: number): number {
  return left + time * sizes.second;
}

export function xToTime({ left, sizes }: TempoLayout, x: number): number {
  return (x - left) / sizes.second;
}

/** Upper edge of a spot's row; `undefined` for a spot that has none. */
export function rowTop({ top, sizes }: TempoLayout, chart: TempoChart, spot: SpotId): number | undefined {
  const row = chart.rows.indexOf(spot);
  return row < 0 ? undefined : top + row * sizes.row;
}

/** The spot in whose row a height lies; `undefined` above and below the rows. */
export function spotAt({ top, sizes }: TempoLayout, chart: TempoChart, y: number): SpotId | undefined {
  return chart.rows[Math.floor((y - top) / sizes.row)];
}

/** Height of the ball's line in a row, of what its man does, and of the words for that, as shares of the row from its upper edge. */
export const ballShare = 0.27;
export const actionShare = 0.6;
export const wordShare = 0.86;

// Each name goes as high as it can without running into the one before it.
function placeBeatLabels(
  beats: readonly ChartBeat[],
  left: number,
  second: number,
): { readonly labels: readonly BeatLabel[]; readonly tiers: number } {
  const ends: number[] = [];
  const labels = beats.map((beat): BeatLabel => {
    const x = left + beat.starts * second;
    const width = Math.max(beat.id.length * nameLetter, triggerName(beat.trigger).length * triggerLetter);
    const free = ends.findIndex((end) => end <= x);
    const tier = free < 0 ? ends.length : free;
    ends[tier] = x + width + labelGap;
    return { beat, x, y: goalStrip + tier * labelHeight + 0.55, width };
  });
  return { labels, tiers: ends.length };
}
