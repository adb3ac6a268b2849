import type { CompiledCue } from '../chance/program.ts';
import type { Point } from '../geometry/point.ts';
import type { Cue, Play, Read } from '../offense/play.ts';
import { carrierActions } from './carrier-actions.ts';
import { cueVocabulary } from './cue-vocabulary.ts';
import { orderOfAction } from './order-of-action.ts';
import { goOn, type RuleList } from './rule-list.ts';

/** What a carrier is taught for one possession, in the words of a play. */
export interface ReadCard {
  /** In the order in which they are tried. */
  readonly reads: readonly Read[];
  /** What he does when no read fits; `null`: he goes on with the play. */
  readonly lastResort: Read['then'] | null;
}

/**
 * A rule list as the reads of a play. `at` is where the carrier stands when he decides, yards. RangeError for a rule that asks
 * for a cue not to hold: a card says what to look for.
 */
export function cardOfList(play: Play, carrier: number, list: RuleList, at: Point): ReadCard {
  const name = (man: number): string => play.spots[man].id;
  const actions = carrierActions(play, carrier);
  const by = name(carrier);
  const then = (action: number): Read['then'] => orderOfAction(play, carrier, actions[action], at);
  return {
    reads: list.rules.map(({ looksAt, mustHold, action }): Read => {
      if (looksAt !== mustHold) throw new RangeError('invalid rule: a cue that must not hold (expected none)');
      const cues = cueVocabulary(carrier).filter((_, cue) => ((mustHold >> cue) & 1) === 1);
      return { carrier: by, cues: cues.map((cue) => namedCue(cue, name)), then: then(action) };
    }),
    lastResort: list.lastResort === goOn ? null : then(list.lastResort),
  };
}

/** A cue as a play has it, by the names of the spots. */
export function namedCue(cue: CompiledCue, name: (man: number) => string): Cue {
  return 'who' in cue ? { kind: cue.kind, who: name(cue.who) } : cue;
}

/** A card as reads alone: what is done in any case is a read without a cue, the last of all. */
export function readsOfCard({ reads, lastResort }: ReadCard): readonly Read[] {
  return lastResort === null ? reads : [...reads, { carrier: lastResort.by, cues: [], then: lastResort }];
}
