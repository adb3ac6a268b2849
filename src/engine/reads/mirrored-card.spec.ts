import { describe, expect, it } from 'vitest';
import { createChanceState } from '../chance/create-state.ts';
import type { Matchup } from '../chance/matchup.ts';
import { compileChance } from '../chance/model.ts';
import { mirrorMatchup, sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { mirrorPlay, mirrorSpotId } from '../offense/mirror.ts';
import { buildDecisionTable } from './build-decision-table.ts';
import { cardOfList, type ReadCard, readsOfCard } from './card-of-list.ts';
import { carrierActions } from './carrier-actions.ts';
import { cueVocabulary } from './cue-vocabulary.ts';
import { type CarrierChance, gatherDecisions } from './gather-decisions.ts';
import { learnKeeping } from './learn-keeping.ts';
import { playGuided } from './play-guided.ts';
import { defaultSearchLimits, searchRuleLists } from './search-rule-lists.ts';

// A play run to the other side is the same play, so its cards are the same cards with left and right exchanged. Men keep their numbers in the
// mirror (`mirrorPlay` keeps the order of the spots); what is compared are the names that a coach reads.

const trials = 14;
const limits = { ...defaultSearchLimits, mostReads: 2, absence: false, leastShare: 0.04, lists: 500 };

function gathered(matchup: Matchup, carrier: number): readonly CarrierChance[] {
  const model = compileChance(matchup, 3);
  const memory = { state: createChanceState(model), spare: createChanceState(model) };
  const span = { from: 0, to: trials, horizon: 4 };
  return gatherDecisions(model, memory, carrier, carrierActions(matchup.play, carrier), span);
}

/** The cues that hold at each look, by their names. */
function cuesSeen(
  { play }: Matchup,
  carrier: number,
  chances: readonly CarrierChance[],
): readonly (readonly string[])[] {
  const names = cueVocabulary(carrier).map((cue) =>
    'who' in cue ? `${cue.kind} ${play.spots[cue.who]!.id}` : cue.kind,
  );
  const looks = chances.flatMap((chance) => chance.looks);
  return looks.map(({ cues }) => names.filter((_, at) => ((cues >> at) & 1) === 1).sort());
}

function bestCards({ play }: Matchup, carrier: number, chances: readonly CarrierChance[]) {
  const [x, y] = chances[0]!.looks[0]!.at;
  const found = searchRuleLists(buildDecisionTable(carrier, chances, learnKeeping(chances)), limits);
  return found.map(({ list, worth }) => ({ card: cardOfList(play, carrier, list, { x, y }), worth }));
}

/** What the trials come to when he goes by a card. */
function played(matchup: Matchup, carrier: number, card: ReadCard) {
  const model = compileChance(matchup, 3);
  const span = { trials: Array.from({ length: trials }, (_, trial) => trial), horizon: 4 };
  return playGuided(model, createChanceState(model), carrier, { reads: readsOfCard(card) }, span);
}

function readsInMirror(matchup: Matchup, card: ReadCard) {
  return mirrorPlay({ ...matchup.play, reads: readsOfCard(card) }).reads;
}

/** Which man to look at: the point, who looks both ways, and one to a side. */
describe.each(['P', 'TL'])('the reads of %s in a mirror', (id) => {
  const carrier = samplePlay.spots.findIndex((spot) => spot.id === id);
  const matchup = sampleMatchup({ play: samplePlay });
  const mirrored = mirrorMatchup(matchup);
  const chances = gathered(matchup, carrier);
  const inMirror = gathered(mirrored, carrier);

  it('are those of his twin', () => {
    expect(mirrored.play.spots[carrier]!.id).toBe(mirrorSpotId(id));
    expect(chances.length).toBeGreaterThan(trials / 3);
  });

  it('come of the same looks, from the other side, to the last bit', () => {
    const turned = inMirror.map((chance) => ({
      ...chance,
      looks: chance.looks.map(({ at: [x, y], cues, ...look }) => ({ ...look, at: [-x, y] })),
    }));
    const plain = chances.map((chance) => ({
      ...chance,
      looks: chance.looks.map(({ cues, ...look }) => ({ ...look, at: [...look.at] })),
    }));
    expect(turned).toEqual(plain);
  });

  it('are looked for in the same cues, of the twins', () => {
    const twins = cuesSeen(mirrored, carrier, inMirror).map((seen) => seen.map((cue) => nameInMirror(cue)).sort());
    expect(twins).toEqual(cuesSeen(matchup, carrier, chances));
    expect(twins.flat().length).toBeGreaterThan(0);
  });

  it('are the same cards with left and right exchanged, worth the same', () => {
    const cards = bestCards(matchup, carrier, chances);
    const others = bestCards(mirrored, carrier, inMirror);
    expect(others.map(({ card }) => readsOfCard(card))).toEqual(cards.map(({ card }) => readsInMirror(matchup, card)));
    expect(others.map(({ worth }) => worth)).toEqual(cards.map(({ worth }) => worth));
    expect(played(mirrored, carrier, others.at(-1)!.card)).toEqual(played(matchup, carrier, cards.at(-1)!.card));
    // A card that names nobody would be its own mirror image.
    expect(readsOfCard(others.at(-1)!.card)).not.toEqual(readsOfCard(cards.at(-1)!.card));
  });
});

function nameInMirror(cue: string): string {
  const [kind, who] = cue.split(' ');
  return who === undefined ? kind! : `${kind} ${mirrorSpotId(who)}`;
}
