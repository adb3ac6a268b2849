import type { Play } from '../../engine/index.ts';
import { crossesCrease, type FieldLimits, isInCrease } from '../field-limits.ts';
import type { JsonPath } from '../json/json-node.ts';
import type { Report } from '../report.ts';
import type { Pace } from './pace.ts';
import { type OrderPlace, type WalkFault, walkLastTen, walkThrough } from './walk.ts';

/** What of a walk through the last ten seconds counts: where everybody comes from is not known. */
const lastTenFaults: ReadonlySet<WalkFault['kind']> = new Set(['cutShort', 'longRun']);

/** Says which runs do not fit into the time that the play gives them, which take long, and which lead through the crease. */
export function checkWalk(play: Play, path: JsonPath, pace: Pace, field: FieldLimits, report: Report): void {
  tell(walkThrough(play, pace), path, field, report);
  const lastTen = walkLastTen(play, pace).filter((fault) => lastTenFaults.has(fault.kind));
  tell(lastTen, [...path, 'lastTen'], field, report);
}

function tell(faults: readonly WalkFault[], path: JsonPath, field: FieldLimits, report: Report): void {
  const pathOf = (order: OrderPlace): JsonPath => [...path, 'beats', order.beat, 'do', order.action];
  const cut = new Set(
    faults.flatMap(({ kind, order }) =>
      kind === 'cutShort' || kind === 'lateForPass' ? [`${order.beat} ${order.action}`] : [],
    ),
  );
  for (const fault of faults) {
    const here = pathOf(fault.order);
    switch (fault.kind) {
      case 'longRun': {
        // That it does not fit into the time says more than that it is long.
        if (cut.has(`${fault.order.beat} ${fault.order.action}`)) break;
        const does = fault.withBall ? 'carries' : 'is sent';
        const waits =
          fault.waiting.length === 0 ? '' : `, and ${fault.waiting.map((id) => `"${id}"`).join(', ')} waits for it`;
        report.add(
          'long-run',
          here,
          `${fault.who} ${does} ${fault.length.toFixed(0)} yd, to ${placeText(fault.end)}: that takes a usual man of the level about ${seconds(fault.takes)}${waits}. Look whether the place is right, or shorten the way.`,
        );
        break;
      }
      case 'calledEarly':
        report.add(
          'call-too-early',
          here,
          `${fault.who} is called to let the ball go ${seconds(fault.has)} after he started to carry it to ${placeText(fault.end)}, which takes about ${seconds(fault.takes)}: he does it at the end of the carry. Let the step wait for "arrive ${fault.who}", or call it later.`,
        );
        break;
      case 'cutShort':
        if (fault.has === 0) {
          report.add(
            'two-places',
            here,
            `${fault.who} is sent to ${placeText(fault.end)}, and by the step "${fault.nextBeat}" elsewhere in the same moment. Keep one of the two, or let the second wait for something.`,
          );
        } else {
          report.add(
            'run-too-long',
            here,
            `${fault.who} cannot be at ${placeText(fault.end)} before the step "${fault.nextBeat}" sends him on: the fastest man of his level needs ${seconds(fault.needs)} for it, and he has about ${seconds(fault.has)}. Shorten the run, or let that step start later.`,
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
        // A place in the crease is told where it is written.
        if (isInCrease(fault.from, field) || isInCrease(fault.to, field)) break;
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
