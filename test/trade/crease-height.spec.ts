import { expect, test } from 'vitest';
import { createLane, laneInto, type Matchup, type SchemeId, type Trace } from '../../src/engine/index.ts';
import {
  comesOpen,
  expectMore,
  feeds,
  lessApart,
  meanOf,
  roundPlay,
  spotIds,
  tracesOf,
  tradeMatchup,
  usualHold,
  watch,
} from './trade-unit.ts';

// Fact 9 of docs/models/trade-facts.md.

const high = roundPlay(usualHold, 8);
const low = roundPlay(usualHold, 4.5);

/** In both schemes the crease man's man is the fifth defender. */
const creaseDefender = 6 + 4;
/** A low man has had the ball for so long before his pass across is weighed: the defense has come to its places. Seconds. */
const settled = 0.5;

const [right, left] = [spotIds.indexOf('WR'), spotIds.indexOf('WL')];

/** Mean odds, over the trial, that a pass across between the low men gets past the crease man's man; undefined without a moment. */
function acrossOdds(trace: Trace, matchup: Matchup): number | undefined {
  const up = trace.events.find((event) => event.kind === 'setUp')?.time ?? Number.POSITIVE_INFINITY;
  const odds: number[] = [];
  let since = 0;
  for (let frame = 1; frame < trace.frames; frame++) {
    const holder = trace.holder_byFrame[frame];
    if (holder !== trace.holder_byFrame[frame - 1]) since = frame;
    if (holder !== right && holder !== left) continue;
    if (frame * trace.step < up || (frame - since) * trace.step < settled) continue;
    odds.push(pastCrease(trace, matchup, frame, holder));
  }
  return odds.length === 0 ? undefined : meanOf(odds).mean;
}

function pastCrease(trace: Trace, matchup: Matchup, frame: number, from: number): number {
  const { agents, places_byFrame: places, step } = trace;
  const at = (agent: number, when: number) => 2 * (when * agents + agent);
  const athletes = [...matchup.six, ...matchup.defenders];
  const motion = new Float64Array(4 * athletes.length);
  const [now, before] = [at(creaseDefender, frame), at(creaseDefender, frame - 1)];
  for (let axis = 0; axis < 2; axis++) {
    motion[4 * creaseDefender + axis] = places[now + axis];
    motion[4 * creaseDefender + 2 + axis] = (places[now + axis] - places[before + axis]) / step;
  }
  const [passer, mate] = [at(from, frame), at(from === right ? left : right, frame)];
  const lane = createLane(athletes.length);
  const movers = {
    topSpeed_byAgent: Float64Array.from(athletes, ({ topSpeed }) => topSpeed),
    drag_byAgent: Float64Array.from(athletes, ({ drag }) => drag),
    reaction_byAgent: Float64Array.from(athletes, ({ reaction }) => reaction),
    stickReach_byAgent: Float64Array.from(athletes, ({ stickReach }) => stickReach),
  };
  laneInto(
    lane,
    places[passer],
    places[passer + 1],
    places[mate],
    places[mate + 1],
    athletes[from].passSpeed,
    false,
    motion,
    movers,
    creaseDefender,
    creaseDefender + 1,
    0,
  );
  return lane.completion;
}

function acrossLane(play: typeof high): readonly number[] {
  const schemes: readonly SchemeId[] = ['box-zone', 'four-man-rotation'];
  return schemes.flatMap((scheme) => {
    const matchup = tradeMatchup({ scheme, play });
    return tracesOf({ scheme, play }, 150).flatMap((trace) => acrossOdds(trace, matchup) ?? []);
  });
}

test('9a a crease man at 8 yd leaves the low lane open, at 4.5 yd he crowds it', () => {
  const [open, crowded] = [acrossLane(high), acrossLane(low)];
  expect(Math.min(open.length, crowded.length), 'trials with the ball low').toBeGreaterThan(100);
  const difference = lessApart(open, crowded);
  expectMore('9a', difference, 3, 0.05);
});

test('9b and at 8 yd he stays a threat', () => {
  const scheme = 'five-man-rotation';
  const [up, down] = [high, low].map((play) => comesOpen(watch({ scheme, play }, 200), feeds));
  const difference = meanOf(up.map((value, trial) => value - down[trial] / 2));
  expectMore('9b', difference, 3, 0);
});
