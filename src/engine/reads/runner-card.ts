import type { RunnerCue } from '../chance/runner-cues.ts';
import type { Play, RunKind, SpotId } from '../offense/play.ts';
import { timeOfLook } from './gather-runs.ts';
import { type RunOrder, runOfOrder } from './run-orders.ts';
import { runnerVocabulary } from './runner-vocabulary.ts';
import type { RunList } from './search-run-cards.ts';

/** When one man is to make one run, in the names of a play. */
export interface RunnerCard {
  readonly runner: SpotId;
  readonly run: RunKind;
  /** He goes as soon as all cues of one of these hold. */
  readonly goesWhen: readonly (readonly RunnerCue<SpotId>[])[];
  /** And in any case so long after the order. Seconds. */
  readonly latest: number;
}

/** A list as a card. RangeError for a list that asks for a cue not to hold, or a run that the play does not have. */
export function runnerCardOf(play: Play, order: RunOrder, { rules, latest }: RunList): RunnerCard {
  const action = runOfOrder(play, order);
  if (action === undefined) throw new RangeError(`unknown run: man ${order.runner} in beat ${order.beat}`);
  const goesWhen = rules.map(({ looksAt, mustHold }) => {
    if (looksAt !== mustHold) throw new RangeError('invalid rule: a cue that must not hold (expected none)');
    const cues = runnerVocabulary(order.runner).filter((_, cue) => ((mustHold >> cue) & 1) === 1);
    return cues.map((cue): RunnerCue<SpotId> => ('who' in cue ? { ...cue, who: play.spots[cue.who].id } : cue));
  });
  return { runner: action.by, run: action.run, goesWhen, latest: timeOfLook(latest) };
}
