import type { ChanceState } from './state.ts';

/** Parts that are shared and never written to: they are passed on and not copied. */
const shared: ReadonlySet<string> = new Set(['script', 'path', 'recorder', 'forced', 'forcedRun']);

/**
 * Make one state of a model what another of the same model is, so that a trial can go on from there more than once. Only at a moment at
 * which no pass or shot is on its way: the model's own memory keeps what was drawn of it. Allocates nothing.
 */
export function copyState(from: ChanceState, to: ChanceState): void {
  copyParts(from, to);
  for (let who = 0; who < 6; who++) to.unit.path[who] = from.unit.path[who];
}

interface Parts {
  [part: string]: unknown;
}

function copyParts(from: object, to: object): void {
  for (const part in from) {
    const value = (from as Parts)[part];
    if (shared.has(part)) {
      if (part !== 'path') (to as Parts)[part] = value;
    } else if (ArrayBuffer.isView(value)) {
      ((to as Parts)[part] as Float64Array).set(value as Float64Array);
    } else if (typeof value === 'object' && value !== null) {
      copyParts(value, (to as Parts)[part] as object);
    } else {
      (to as Parts)[part] = value;
    }
  }
}
