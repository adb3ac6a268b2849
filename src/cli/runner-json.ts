import { engineVersion, type Play, runnerCardOf } from '../engine/index.ts';
import type { ReadsConditions } from './reads-json.ts';
import type { StudiedRun } from './studied-run.ts';

/** When a man should make each of his runs, for other programs. Goals from the call on, with 95 % intervals; the order of the keys is the contract. */
export function runnerJson(
  runs: readonly StudiedRun[],
  play: Play,
  reads: number,
  { seed, hash, penalty, level }: ReadsConditions,
): string {
  const document = {
    engine: engineVersion,
    seed,
    inputHash: hash,
    play: play.id,
    runner: play.spots[runs[0]!.order.runner]!.id,
    penaltySeconds: penalty,
    level,
    card: reads,
    runs: runs.map((run) => runOf(run, play, reads)),
  };
  return `${JSON.stringify(document, null, 2)}\n`;
}

/** One run; without a study the play hardly ever comes to it, and nothing else is known. */
function runOf({ order, study }: StudiedRun, play: Play, reads: number) {
  const step = play.beats[order.beat]!.id;
  if (study === null) return { step, study: null };
  const { comes, goes, wentAfter, learntFrom, measuredIn, goOn, byTime, best, cards, byScheme } = study;
  const shown = Math.min(reads, cards.length - 1);
  return {
    step,
    study: {
      share: comes,
      learntFrom,
      measuredIn,
      asPlayed: { goals: goOn, goes, after: goes > 0 ? wentAfter : null },
      times: byTime,
      best,
      cards: cards.map(({ list, goals, gain, learnt }) => {
        const { goesWhen, latest } = runnerCardOf(play, order, list);
        return { goesWhen, latest, goals, gain, learnt };
      }),
      schemes: byScheme.map(({ scheme, goOn: asPlayed, atOnce, gain_byCard }) => ({
        scheme,
        asPlayed,
        atOnce,
        gain: gain_byCard[shown],
      })),
    },
  };
}
