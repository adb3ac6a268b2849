import type { Play } from '../../engine/index.ts';
import { crossesCrease, type FieldLimits } from '../field-limits.ts';
import type { JsonPath } from '../json/json-node.ts';
import type { Report } from '../report.ts';
import type { Pace } from './pace.ts';
import { type OrderPlace, walkThrough } from './walk.ts';

/** Says which runs do not fit into the time that the play gives them, and which lead through the crease. */
export function checkWalk(play: Play, path: JsonPath, pace: Pace, field: FieldLimits, report: Report): void {
  const pathOf = (order: OrderPlace): JsonPath => [...path, 'beats', order.beat, 'do', order.action];
  for (const fault of walkThrough(play, pace)) {
    const here = pathOf(fault.order);
    switch (fault.kind) {
      case 'cutShort':
        if (fault.has === 0) {
          report.add(
            'two-places',
            here,
            `${fault.who} is sent to ${placeText(fault.end)}, and by the beat "${fault.nextBeat}" elsewhere in the same moment. Keep one of the two, or let the second wait for something.`,
          );
        } else {
          report.add(
            'run-too-long',
            here,
            `${fault.who} cannot be at ${placeText(fault.end)} before the beat "${fault.nextBeat}" sends him on: at his level's top speed the run takes ${seconds(fault.needs)}, and he has about ${seconds(fault.has)}. Shorten the run, or let that beat start later.`,
          );
        }
        break;
      case 'lateForPass':
        report.add(
          'late-for-pass',
          here,
          `${fault.who} is thrown to about ${fault.short.toFixed(0)} yd before he comes to ${placeText(fault.end)}. Start his run earlier, shorten it, or hold the ball.`,
        );
        break;
      case 'stretch':
        if (crossesCrease(fault.from, fault.to, field)) {
          report.add(
            'through-crease',
            here,
            `The straight way of ${fault.who} from ${placeText(fault.from)} to ${placeText(fault.to)} leads through the crease. Lead him round it with "via x,y".`,
          );
        }
        break;
      default:
        exhaustive(fault);
    }
  }
}

function placeText(point: { readonly x: number; readonly y: number }): string {
  return `${rounded(point.x)},${rounded(point.y)}`;
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10 + 0;
}

function seconds(value: number): string {
  return `${value.toFixed(1)} s`;
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown fault: ${JSON.stringify(value)}`);
}
