import { expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import type { Matchup } from '../chance/matchup.ts';
import { compileChance } from '../chance/model.ts';
import type { RunnerCue } from '../chance/runner-cues.ts';
import { busyPlay, mirrorMatchup, sampleMatchup } from '../chance/sample-matchup.fixture.ts';
import { mirrorSpotId } from '../offense/mirror.ts';
import type { SpotId } from '../offense/play.ts';
import { gatherRuns } from './gather-runs.ts';
import { type RunnerCard, runnerCardOf } from './runner-card.ts';
import { defaultSearchLimits } from './search-rule-lists.ts';
import { searchRunCards } from './search-run-cards.ts';

const order = { beat: 1, runner: busyPlay.spots.findIndex(({ id }) => id === 'WL') };
const limits = { ...defaultSearchLimits, mostReads: 2, absence: false, leastShare: 0.04, lists: 300 };

function bestCards(matchup: Matchup) {
  const model = compileChance(matchup, 3);
  const memory = { state: createChanceState(model), spare: createChanceState(model) };
  const chances = gatherRuns(model, memory, order, { from: 0, to: 24, horizon: 6 });
  const runs = { ...order, chances, weight_byChance: new Float64Array(chances.length).fill(1) };
  return searchRunCards(runs, (left) => left / 400, limits).map(({ list, worth }) => ({
    card: runnerCardOf(matchup.play, order, list),
    worth,
  }));
}

function inMirror({ goesWhen, runner, ...card }: RunnerCard): RunnerCard {
  const turned = (cue: RunnerCue<SpotId>): RunnerCue<SpotId> =>
    'who' in cue ? { ...cue, who: mirrorSpotId(cue.who) } : cue;
  return { ...card, runner: mirrorSpotId(runner), goesWhen: goesWhen.map((cues) => cues.map(turned)) };
}

it('the cards for a run are in the mirror the cards, by the names that a coach reads', () => {
  const matchup = sampleMatchup({ play: busyPlay });
  const cards = bestCards(matchup);
  // With nothing to look for there would be nothing to turn over.
  expect(cards.at(-1)!.card.goesWhen.length).toBeGreaterThan(0);
  expect(bestCards(mirrorMatchup(matchup))).toEqual(cards.map(({ card, worth }) => ({ card: inMirror(card), worth })));
});
