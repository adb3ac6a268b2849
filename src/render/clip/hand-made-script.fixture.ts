import type { LookWindow, ScriptTrace } from '../../engine/index.ts';
import { handMadeTrace } from '../hand-made.fixture.ts';

const empty = new Float32Array();

export const handMadeWindow: LookWindow = {
  trial: 3,
  kind: 'skip',
  from: 1,
  to: 4,
  opens: 0.3,
  closes: 0.6,
  seenAt: 20,
  completion: 0.8,
  shotOdds: 0.3,
  leftBy: -1,
  duty: 0,
  lateBy: 0,
};

/** The trace that is small enough to check by hand, as trial 3 of a watched play; `windows` are what opens in it. */
export function handMadeScript(windows: readonly LookWindow[] = [handMadeWindow]): ScriptTrace {
  return {
    trial: 3,
    trace: handMadeTrace(),
    began: 0,
    weighed: {
      time_byMoment: empty,
      hand_byMoment: new Int8Array(),
      completion_byMate: empty,
      shotOdds_byMate: empty,
      value_byMate: empty,
      lob_byMate: new Uint8Array(),
      shotOdds_byMoment: empty,
      shotValue_byMoment: empty,
      holdValue_byMoment: empty,
    },
    windows,
  };
}
