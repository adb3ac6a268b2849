import { describe, expect, test } from 'vitest';
import {
  compileChance,
  createAthlete,
  createKeeper,
  disciplines,
  flightTime,
  type Level,
  levelDiscipline,
  levelMean,
  recordTrace,
  type Scheme,
  schemeList,
  sortedQuantile,
} from '../../engine/index.ts';
import { demoPlaybook } from '../demo.ts';
import type { Playbook, PlayEntry } from '../schema.ts';
import { toEnginePlay } from '../to-engine.ts';
import { groundOf } from './play-ground.ts';
import { frameSeconds, type PlayTiming, passTime, playTiming } from './play-timing.ts';

const ground = groundOf(demoPlaybook);
const [lantern, quarry, ferry] = demoPlaybook.plays as [PlayEntry, PlayEntry, PlayEntry];

/** Every built-in scheme of five: what one of them hinders another does not. */
const schemes = schemeList.filter((scheme) => scheme.defenders === 5);
const trials = 20;

/** Trial `trial` of the script alone: the look that it would be left for never comes. */
const never = { time: 1e9, from: 0, to: 1 };

/** Seconds from the beat before to each beat, in chances by usual men of the level over the schemes. */
function gapsInChances(playbook: Playbook, id: string): ReadonlyMap<string, readonly number[]> {
  const { level } = playbook.team;
  const gaps = new Map<string, number[]>();
  for (const scheme of schemes) {
    const model = compileChance(matchupOf(playbook, id, scheme, level), 11);
    for (let trial = 0; trial < trials; trial++) {
      let before: number | undefined;
      for (const event of recordTrace(model, trial, never).events) {
        if (event.kind === 'reset' || event.kind === 'leave' || event.kind === 'turnover') break;
        if (event.kind !== 'beat' || event.lastTen) continue;
        if (before !== undefined) gaps.set(event.beat, [...(gaps.get(event.beat) ?? []), event.time - before]);
        before = event.time;
      }
    }
  }
  return gaps;
}

function matchupOf(playbook: Playbook, id: string, scheme: Scheme, level: Level) {
  const play = toEnginePlay(playbook, id);
  return {
    play,
    six: play.spots.map(({ hand }) =>
      createAthlete({ level, hand: hand === 'either' ? 'right' : hand, crosse: 'short' }),
    ),
    scheme,
    defenders: scheme.names.map(() => createAthlete({ level, hand: 'right', crosse: 'pole' })),
    discipline: scheme.names.map(() => disciplines[levelDiscipline[level]]),
    keeper: createKeeper({ level }),
    released: createAthlete({ level, hand: 'right', crosse: 'pole' }),
    penalty: { seconds: 60, releasable: true, start: 'restart', shotClock: null },
    sense: 1,
  } as const;
}

// Our own chances are the measure: the timing is to say what they do where nobody hinders them (docs/models/play-timing.md).
describe('a beat comes as long after the one before as it does in chances of the script alone', () => {
  /** What a man in the way, a step toward the ball or a look more costs in the middle of many chances. Seconds. */
  const within = 0.3;
  /** Quarry's curl leads through the men who guard the crease: they hold him up, and the timing knows nothing of them. */
  const heldUp = { beat: 'quarry feed', by: 0.7 };
  test.each([
    [lantern, ['down', 'behind', 'look', 'finish']],
    [quarry, ['low', 'curl', 'seep', 'feed', 'turn']],
    [ferry, ['go', 'back', 'across', 'feed', 'finish']],
  ] as const)('%#', (play, beats) => {
    const timed = playTiming(play, ground).beats;
    const gaps = gapsInChances(demoPlaybook, play.id);
    for (const beat of beats) {
      const seen = [...gaps.get(beat)!].sort((a, b) => a - b);
      expect(seen.length, beat).toBeGreaterThan(4);
      const index = timed.findIndex((each) => each.beat === beat);
      const written = timed[index]!.at - timed[index - 1]!.at;
      const late = sortedQuantile(seen, 0.5)! - written;
      expect(late, beat).toBeGreaterThanOrEqual(-within);
      expect(late, beat).toBeLessThanOrEqual(`${play.id} ${beat}` === heldUp.beat ? heldUp.by : within);
    }
  });
});

const beatAt = (timing: PlayTiming, beat: string) => timing.beats.find((each) => each.beat === beat)?.at;

describe('a play over time', () => {
  const timing = playTiming(quarry, ground);

  test('the ball goes from hand to hand, and is in the air between', () => {
    expect(timing.holds.map((hold) => hold.who)).toEqual(['TR', 'TL', 'WL', 'CR']);
    for (const [i, { leaves, arrives }] of timing.throws.entries()) {
      expect(timing.holds[i]!.until).toBe(leaves);
      expect(timing.holds[i + 1]!.from).toBe(arrives);
    }
    expect(timing.shots).toEqual([{ at: { beat: 'turn', action: 0 }, who: 'CR', leaves: timing.holds.at(-1)!.until }]);
  });

  test('a pass flies as long as the engine lets it, to the step', () => {
    const [first] = timing.throws;
    const { yards, seconds } = passTime(first!.fromPlace, first!.toPlace, '14U');
    expect(yards).toBe(14);
    // 14 m/s at 14U, drag .0057 a yard: 14 / 15.31 * (1 + .04).
    expect(seconds).toBeCloseTo(flightTime(14, levelMean('14U', 'passSpeed')), 12);
    expect(seconds).toBeCloseTo(0.952, 2);
    expect(first!.arrives - first!.leaves).toBeGreaterThanOrEqual(seconds);
    expect(first!.arrives - first!.leaves).toBeLessThan(seconds + 0.051);
  });

  test('a call comes so long after its beat', () => {
    expect(beatAt(timing, 'seep')! - beatAt(timing, 'curl')!).toBeCloseTo(0.8, 9);
  });

  test('a way starts where its man is and ends where he is sent', () => {
    const curl = timing.ways.find((way) => way.at.beat === 'curl' && way.who === 'CR')!;
    expect(curl.places[0]).toEqual({ x: 3, y: 6 });
    expect(curl.places.at(-1)).toEqual({ x: -3.5, y: 5 });
    expect(curl.whole).toBe(true);
    expect(curl.places).toHaveLength(Math.ceil((curl.ends - curl.starts) / frameSeconds - 1e-9) + 1);
    expect(beatAt(timing, 'feed')).toBe(curl.ends);
  });

  test('a hold, a fake and a longer way take their time', () => {
    const written = (phrases: string[]) =>
      playTiming({ ...quarry, beats: [{ id: 'go', on: 'start', do: phrases }], reads: [] }, ground).throws[0]!.leaves;
    const plain = written(['TR pass TL']);
    expect(plain).toBeCloseTo(0.7, 9);
    expect(written(['TR hold 1', 'TR pass TL'])).toBeGreaterThanOrEqual(1.3);
    expect(written(['TR fake WR', 'TR pass TL']) - plain).toBeCloseTo(0.35, 9);
    expect(written(['TR carry to 7,10', 'TR pass TL'])).toBeGreaterThan(written(['TR carry to 7,12', 'TR pass TL']));
  });

  test('a faster man is sooner there', () => {
    const fast = new Map([['CR', { topSpeed: 9, drag: 1.1, passSpeed: 15, passRelease: 0.65, shotRelease: 0.7 }]]);
    expect(beatAt(playTiming(quarry, ground, { men: fast }), 'feed')!).toBeLessThan(beatAt(timing, 'feed')!);
  });

  test('older men are quicker', () => {
    const ends = (['10U', '14U', 'college'] as const).map((level) => playTiming(quarry, { ...ground, level }).ends);
    expect(ends).toEqual([...ends].sort((a, b) => b - a));
    expect(new Set(ends).size).toBe(3);
  });

  test('a beat that nothing starts, an unknown set, the last ten seconds', () => {
    const lost = { ...quarry, beats: [...quarry.beats, { id: 'never', on: 'catch WR', do: [] }] };
    expect(beatAt(playTiming(lost, ground), 'never')).toBeUndefined();
    expect(playTiming({ ...quarry, set: 'nowhere' }, ground)).toMatchObject({ beats: [], ends: 0 });
    const last = playTiming(lantern, ground, { script: 'lastTen' });
    expect(last.beats).toEqual([{ beat: 'pinch', at: 0 }]);
    expect(last.ways.map((way) => way.who).sort()).toEqual(['C', 'TL', 'TR', 'WL']);
    expect(last.holds).toEqual([]);
  });
});
