import { createChanceState } from '../chance/create-state.ts';
import type { ChanceModel } from '../chance/model.ts';
import type { TraceEvent } from '../chance/trace.ts';
import { type ScriptTrace, traceScript } from './watch-trace.ts';

/** The man-up that shows most of a play, and how many of those that were watched came as far. */
export interface FurthestScript {
  readonly script: ScriptTrace;
  readonly watched: number;
  readonly asFar: number;
}

/**
 * Of the first `watched` man-ups the first in which the play comes farthest: most of its steps begun, then most of its own passes thrown. Nobody
 * takes an opening, so that the play is seen as it is written. Luck has no part in the choice: whether a pass is caught or a shot goes in is not
 * asked. Undefined when the play begins in none.
 */
export function furthestScript(model: ChanceModel, watched: number): FurthestScript | undefined {
  const scripts = watchScripts(model, watched);
  const farthest = Math.max(...scripts.map(wayOf));
  const asFar = scripts.filter((script) => wayOf(script) === farthest);
  const [first] = asFar;
  return first && { script: first, watched, asFar: asFar.length };
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

/** More passes than any play has steps for: a step counts before them all. */
const passesBesideStep = 1000;

function wayOf({ trace: { events } }: ScriptTrace): number {
  const steps = new Set(events.flatMap((event) => (event.kind === 'beat' ? [event.beat] : [])));
  return steps.size * passesBesideStep + events.filter(isOwnPass).length;
}

function isOwnPass(event: TraceEvent): boolean {
  return event.kind === 'pass' && event.why === 'script';
}
