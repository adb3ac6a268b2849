import { createChanceState } from '../chance/create-state.ts';
import type { ChanceModel } from '../chance/model.ts';
import type { TraceEvent } from '../chance/trace.ts';
import { type ScriptTrace, traceScript } from './watch-trace.ts';

/** The man-up that shows most of a play, and how many of those that were watched came as far. */
export interface FurthestScript {
  readonly script: ScriptTrace;
  /** How it ends: with a shot as the play is written, with the ball lost, or because the play goes no further. */
  readonly ends: ScriptEnd;
  readonly watched: number;
  readonly asFar: number;
}

export type ScriptEnd = 'shot' | 'stuck' | 'lost';

/**
 * Of the first `watched` man-ups the first in which the play comes farthest: most of its steps begun, then most of its own passes thrown, then the shot taken rather than the ball lost
 * on the way to it. Nobody takes an opening, so that the play is seen as it is written. Whether the shot goes in is not asked. `asFar` counts those that are its equal in all of this.
 * Undefined when the play begins in none.
 */
export function furthestScript(model: ChanceModel, watched: number): FurthestScript | undefined {
  const scripts = watchScripts(model, watched);
  const farthest = Math.max(...scripts.map(wayOf));
  const asFar = scripts.filter((script) => wayOf(script) === farthest);
  const [first] = asFar;
  return first && { script: first, ends: endOf(first), watched, asFar: asFar.length };
}

function watchScripts(model: ChanceModel, watched: number): readonly ScriptTrace[] {
  const state = createChanceState(model);
  const scripts: ScriptTrace[] = [];
  for (let trial = 0; trial < watched; ) {
    const script = traceScript(model, state, trial);
    // It looks on beyond the last of those that were asked for.
    if (script === undefined || script.trial >= watched) break;
    scripts.push(script);
    trial = script.trial + 1;
  }
  return scripts;
}

/** More passes than any play has steps for, and more than there are ends: a step counts before all passes, and a pass before any end. */
const passesBesideStep = 1000;
const endsBesidePass = 10;

function wayOf(script: ScriptTrace): number {
  const { events } = script.trace;
  const steps = new Set(events.flatMap((event) => (event.kind === 'beat' ? [event.beat] : [])));
  const passes = events.filter(isOwnPass).length;
  return (steps.size * passesBesideStep + passes) * endsBesidePass + endOrder.indexOf(endOf(script));
}

/** The worst first. A play that is given up where it stands was at least not taken from us. */
const endOrder: readonly ScriptEnd[] = ['lost', 'stuck', 'shot'];

function endOf({ trace: { events } }: ScriptTrace): ScriptEnd {
  if (events.some(({ kind }) => kind === 'shot')) return 'shot';
  return events.some(isLoss) ? 'lost' : 'stuck';
}

function isLoss({ kind }: TraceEvent): boolean {
  return ['dropped', 'intercepted', 'deflected', 'stripped', 'badPass'].includes(kind);
}

function isOwnPass(event: TraceEvent): boolean {
  return event.kind === 'pass' && event.why === 'script';
}
