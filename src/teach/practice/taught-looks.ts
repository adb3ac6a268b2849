import type { Play, SpotId } from '../../engine/index.ts';
import { playSteps } from '../../render/index.ts';

/** One way in which a play is taught to end: a throw to the man who then shoots, or a shot of the carrier's own. */
export interface TaughtLook {
  readonly from: SpotId;
  /** The carrier himself for a shot of his own. */
  readonly to: SpotId;
  readonly kind: 'shot' | 'pass' | 'skip' | 'feed';
  /** Number of the read that asks for it; `null` when the script does. */
  readonly read: number | null;
  /** Id of the step in which it is thrown; `null` for a read that counts in every one. */
  readonly beat: string | null;
}

/**
 * What a play is taught to end in, each once, in the order of its steps and then of its reads: skips and feeds of the script, whatever brings the ball to a
 * man who then shoots, and what its reads throw or shoot. Passes that only move the ball are none: every run of the play has them anyway.
 */
export function taughtLooks(play: Play): readonly TaughtLook[] {
  const found: TaughtLook[] = [];
  const add = (look: TaughtLook): void => {
    if (!found.some(({ from, to }) => from === look.from && to === look.to)) found.push(look);
  };
  for (const look of scriptLooks(play)) add(look);
  for (const [read, { carrier: from, during, then }] of play.reads.entries()) {
    const beat = during ?? null;
    if (then.kind === 'pass') add({ from, to: then.to, kind: kindOf(then.style), read, beat });
    if (then.kind === 'shot' || then.kind === 'stepIn' || then.kind === 'runIn')
      add({ from, to: from, kind: 'shot', read, beat });
  }
  return found;
}

function scriptLooks(play: Play): readonly TaughtLook[] {
  const looks: TaughtLook[] = [];
  let last: TaughtLook | undefined;
  for (const { beat } of playSteps(play)) {
    for (const action of beat.actions) {
      if (action.kind === 'pass') {
        last = { from: action.by, to: action.to, kind: kindOf(action.style), read: null, beat: beat.id };
        if (action.style !== 'adjacent') looks.push(last);
      }
      if (action.kind === 'shot') {
        const own: TaughtLook = { from: action.by, to: action.by, kind: 'shot', read: null, beat: beat.id };
        looks.push(last?.to === action.by ? last : own);
      }
    }
  }
  return looks;
}

function kindOf(style: 'adjacent' | 'skip' | 'feed'): TaughtLook['kind'] {
  return style === 'adjacent' ? 'pass' : style;
}
