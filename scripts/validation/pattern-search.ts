/** A number to find: where to begin, how far to step at first, and between what (both ends included) it makes sense. */
export interface Knob {
  readonly name: string;
  readonly start: number;
  readonly step: number;
  readonly low: number;
  readonly high: number;
}

export interface Search {
  readonly best: readonly number[];
  readonly loss: number;
  readonly evaluations: number;
}

/** Steps are not made smaller than this share of the first ones. */
const finest = 1 / 8;

/**
 * The pattern search of Hooke and Jeeves (1961, J ACM 8:212): step each knob up or down while that helps, go on in the direction that
 * helped, halve the steps when nothing does. Needs no slopes and draws nothing, so the same knobs and losses give the same answer.
 * Ends when the steps are an eighth of the first, or after `most` evaluations.
 */
export function patternSearch(
  knobs: readonly Knob[],
  lossOf: (values: readonly number[]) => number,
  most: number,
): Search {
  let evaluations = 0;
  const evaluate = (values: readonly number[]) => {
    evaluations++;
    return lossOf(values);
  };
  let best: readonly number[] = knobs.map((knob) => knob.start);
  let loss = evaluate(best);
  for (let scale = 1; scale >= finest && evaluations < most; ) {
    const before = best;
    for (let index = 0; index < knobs.length && evaluations < most; index++) {
      for (const sign of [1, -1]) {
        const tried = moved(knobs, best, index, sign * scale);
        if (tried[index] === best[index] || evaluations >= most) continue;
        const found = evaluate(tried);
        if (found >= loss) continue;
        best = tried;
        loss = found;
        break;
      }
    }
    if (best === before) {
      scale /= 2;
      continue;
    }
    if (evaluations >= most) break;
    // What helped once may help again: one leap of the same length.
    const leap = best.map((value, index) => clamp(knobs[index]!, 2 * value - before[index]!));
    const found = evaluate(leap);
    if (found >= loss) continue;
    best = leap;
    loss = found;
  }
  return { best, loss, evaluations };
}

function moved(knobs: readonly Knob[], values: readonly number[], index: number, scale: number): readonly number[] {
  return values.map((value, at) => (at === index ? clamp(knobs[at]!, value + scale * knobs[at]!.step) : value));
}

function clamp({ low, high }: Knob, value: number): number {
  return Math.min(high, Math.max(low, value));
}
