import { compileChance, type Matchup, recordTrace, type Trace } from '../engine/index.ts';
import { count, type TraceNames, traceNames } from '../render/index.ts';
import { buildMatchup } from '../worker/index.ts';
import type { Conditions } from './conditions.ts';
import { badUse } from './failure.ts';
import type { OpenPlaybook } from './open-playbook.ts';

/** One trial with the names to tell it by. */
export interface RecordedTrial {
  readonly trace: Trace;
  readonly names: TraceNames;
  readonly matchup: Matchup;
  /** "TR 7 Sam Okafor, left hand": one for each spot. */
  readonly lineUp: readonly string[];
}

/** Plays one trial of a matchup and keeps all of it. The same trial of the same seed is always the same. */
export function recordTrial(
  { playbook }: OpenPlaybook,
  asked: { readonly play: string; readonly scheme: string; readonly opponent?: string },
  conditions: Conditions,
  trial: number,
): RecordedTrial {
  const built = buildMatchup(playbook, { ...conditions, ...asked });
  if (built.kind === 'refused') throw badUse(`${built.reason}.`);
  const { matchup, players } = built;
  return {
    trace: recordTrace(compileChance(matchup, conditions.seed), trial),
    matchup,
    names: traceNames(matchup),
    lineUp: matchup.play.spots.map((spot, index) => {
      const player = players[index];
      return player === undefined
        ? spot.id
        : `${spot.id} ${count(player.number)} ${player.name}, ${handWords[player.hand]}`;
    }),
  };
}

const handWords = { left: 'left-handed', right: 'right-handed', both: 'both hands' } as const;
