import { describe, expect, it, test } from 'vitest';
import { disciplines } from '../defense/discipline.ts';
import { schemes, schemesFor } from '../defense/schemes.ts';
import type { Beat, Play } from '../offense/play.ts';
import { levels } from '../people/athlete.ts';
import { createChanceState } from './create-state.ts';
import { fakeTo } from './fake.ts';
import { compileChance } from './model.ts';
import { createOptions } from './options.ts';
import { advanceTrial, beginTrial, recordTrace } from './run.ts';
import { type SampleChoice, sampleMatchup, samplePlay } from './sample-matchup.fixture.ts';
import { stepSeconds, stride } from './state.ts';
import type { Trace, TraceEvent } from './trace.ts';
import { weighInto } from './weigh.ts';

// A unit runs the coach's play: what the whole chance makes of it, and what it must not lose of it on the way.

const seed = 3;

function traces(choice: SampleChoice, count: number): Trace[] {
  const model = compileChance(sampleMatchup(choice), seed);
  return Array.from({ length: count }, (_, trial) => recordTrace(model, trial));
}

/** Some kinds share one form, so the form that has this kind among its own. */
type EventOf<K extends TraceEvent['kind'], E = TraceEvent> = E extends { readonly kind: infer Kinds }
  ? K extends Kinds
    ? E
    : never
  : never;

function of<K extends TraceEvent['kind']>(trace: Trace, kind: K): EventOf<K>[] {
  return trace.events.filter((event) => event.kind === kind) as EventOf<K>[];
}

const pass = (by: string, to: string): Beat['actions'][number] => ({ kind: 'pass', by, to, style: 'adjacent' });

describe('the play is run', () => {
  const played = schemesFor(5)
    .filter((scheme) => scheme.id !== 'shutoff')
    .flatMap((scheme) => traces({ scheme, level: 'pro', discipline: disciplines.sharp }, 12));

  it('in most chances it begins, and its passes are a good part of what is thrown after that', () => {
    const begun = played.filter((trace) => of(trace, 'beat').length > 0);
    expect(begun.length / played.length).toBeGreaterThan(0.75);
    let ofThePlay = 0;
    let others = 0;
    for (const trace of begun) {
      const from = of(trace, 'beat')[0]!.time;
      for (const { time, why } of of(trace, 'pass')) {
        if (time < from) continue;
        if (why === 'script' || why === 'read') ofThePlay++;
        else others++;
      }
    }
    expect(ofThePlay / (ofThePlay + others)).toBeGreaterThan(0.3);
  });

  it('no beat begins after the ball has gone where the play does not send it, until it is run anew', () => {
    let left = 0;
    for (const trace of played) {
      let away = false;
      for (const event of trace.events) {
        if (event.kind === 'pass' && event.why === 'open') away = true;
        if (event.kind === 'reset' || event.kind === 'restart' || (event.kind === 'beat' && event.beat === 'swing'))
          away = false;
        if (event.kind === 'beat') expect(away).toBe(false);
        if (away) left++;
      }
    }
    expect(left).toBeGreaterThan(0);
  });

  it('a play whose starter is shut off is played on without him', () => {
    const star = { ...samplePlay, start: { ...samplePlay.start, ball: samplePlay.spots[0]!.id } };
    const model = compileChance(sampleMatchup({ scheme: schemes.shutoff, play: star, level: 'pro' }), seed);
    const shots = Array.from({ length: 40 }, (_, trial) => of(recordTrace(model, trial), 'shot').length > 0);
    expect(shots.filter(Boolean).length).toBeGreaterThan(20);
  });
});

describe('a man who is thrown to', () => {
  const carryOn: Play = {
    ...samplePlay,
    beats: [
      { id: 'give', when: { kind: 'start' }, actions: [pass('TR', 'P')] },
      {
        id: 'carry',
        when: { kind: 'pass', from: 'TR', to: 'P' },
        actions: [{ kind: 'carry', by: 'P', path: [{ x: -5, y: 13 }] }],
      },
      { id: 'there', when: { kind: 'arrival', who: 'P' }, actions: [pass('P', 'TL')] },
    ],
  };

  it('catches before he carries', () => {
    let thrown = 0;
    let past = 0;
    let there = 0;
    for (const trace of traces({ play: carryOn, level: 'pro' }, 60)) {
      thrown += of(trace, 'pass').filter(({ from, to, why }) => from === 1 && to === 0 && why === 'script').length;
      past += of(trace, 'badPass').length;
      there += of(trace, 'beat').filter(({ beat }) => beat === 'there').length;
    }
    expect(thrown).toBeGreaterThan(30);
    expect(past / thrown).toBeLessThan(0.05);
    expect(there / thrown).toBeGreaterThan(0.2);
  });

  it('on his run has come to its end: what waits for his arrival begins', () => {
    const onTheRun: Play = {
      ...samplePlay,
      beats: [
        {
          id: 'go',
          when: { kind: 'start' },
          actions: [{ kind: 'run', run: 'replace', by: 'P', path: [{ x: -6, y: 14 }], go: 'now' }, pass('TR', 'P')],
        },
        { id: 'there', when: { kind: 'arrival', who: 'P' }, actions: [pass('P', 'TL')] },
      ],
    };
    let caught = 0;
    for (const trace of traces({ play: onTheRun, level: 'pro' }, 40)) {
      const thrown = of(trace, 'pass').find(({ why }) => why === 'script');
      if (thrown === undefined || thrown.to !== 0) continue;
      const taken = of(trace, 'catch').find(({ time }) => time >= thrown.time);
      if (taken === undefined || taken.who !== 0) continue;
      caught++;
      const there = of(trace, 'beat').find(({ beat }) => beat === 'there');
      expect(there!.time).toBeLessThanOrEqual(taken.time);
    }
    expect(caught).toBeGreaterThan(10);
  });
});

test('a run that the pass of a read cuts short begins nothing that its thrower was to do with the ball', () => {
  const skipped: Play = {
    ...samplePlay,
    beats: [
      {
        id: 'go',
        when: { kind: 'start' },
        actions: [{ kind: 'run', run: 'replace', by: 'P', path: [{ x: -6, y: 14 }], go: 'now' }],
      },
      { id: 'skip', when: { kind: 'arrival', who: 'P' }, actions: [pass('TR', 'TL')] },
    ],
    reads: [{ carrier: 'TR', during: 'go', cues: [], then: { kind: 'pass', by: 'TR', to: 'P', style: 'adjacent' } }],
  };
  let read = 0;
  for (const trace of traces({ play: skipped, level: 'pro' }, 30)) {
    const first = of(trace, 'read')[0];
    const taken = first === undefined ? undefined : of(trace, 'catch').find(({ time }) => time > first.time);
    if (first === undefined || taken === undefined) continue;
    read++;
    const over = of(trace, 'reset')[0]?.time ?? Number.POSITIVE_INFINITY;
    expect(of(trace, 'beat').filter(({ beat, time }) => beat === 'skip' && time < over)).toEqual([]);
  }
  expect(read).toBeGreaterThan(10);
});

test('a pass that the carrier does not dare is named when the play is given up', () => {
  const refused = schemesFor(5).flatMap((scheme) =>
    traces({ scheme, level: '14U' }, 12).flatMap((trace) => of(trace, 'reset').flatMap((reset) => reset.refused ?? [])),
  );
  expect(refused.length).toBeGreaterThan(5);
  for (const { from, to, believed } of refused) {
    expect(from).not.toBe(to);
    expect(believed).toBeLessThan(0.9);
  }
});

test('men who back up a shot win more of those that go wide', () => {
  const spots = samplePlay.spots.map(
    (spot) => ({ ...spot, safety: spot.id.startsWith('W') ? 'backUp' : 'none' }) as const,
  );
  const nobody = spots.map((spot) => ({ ...spot, safety: 'none' }) as const);
  const kept = (play: Play): number => {
    const wide = traces({ play, level: 'pro', six: { shotScatter: 0.2 } }, 80).flatMap((trace) =>
      of(trace, 'wide').slice(0, 1),
    );
    expect(wide.length).toBeGreaterThan(30);
    return wide.filter((shot) => shot.kept).length / wide.length;
  };
  expect(kept({ ...samplePlay, spots })).toBeGreaterThan(kept({ ...samplePlay, spots: nobody }) + 0.1);
});

test('a change for the last ten seconds waits until the set is up', () => {
  const lastTen = { beats: [{ id: 'now', when: { kind: 'start' }, actions: [pass('TR', 'P')] }], reads: [] } as const;
  for (const trace of traces({ play: { ...samplePlay, lastTen }, penalty: { seconds: 9 } }, 20)) {
    const [up] = of(trace, 'setUp');
    const [now] = of(trace, 'beat');
    if (now === undefined) continue;
    expect(now.beat).toBe('now');
    expect(now.time).toBeGreaterThanOrEqual(up!.time);
  }
});

test('a look that is being valued is taken at its moment', () => {
  const model = compileChance(sampleMatchup({ level: 'pro' }), seed);
  let taken = 0;
  for (let trial = 0; trial < 30; trial++) {
    const trace = recordTrace(model, trial, { time: 0.5, from: model.program.starter, to: 0 });
    const [thrown] = of(trace, 'pass');
    if (thrown === undefined || thrown.to !== 0 || thrown.from !== model.program.starter) continue;
    expect(thrown.time).toBeLessThanOrEqual(0.5 + model.athletes[thrown.from]!.passRelease / 2 + 2 * stepSeconds);
    taken++;
  }
  expect(taken).toBeGreaterThan(20);
});

describe('what a unit waits for', () => {
  it('grows with its level, shots and hands', () => {
    const worth = levels.map((level) => compileChance(sampleMatchup({ level }), seed).parameters.continuationTop);
    for (let at = 1; at < worth.length; at++) expect(worth[at]!).toBeGreaterThan(worth[at - 1]!);
  });

  it.each(['12U', '14U', 'highSchool', 'college', 'pro'] as const)('lets a %s unit shoot in most chances', (level) => {
    const shot = traces({ level }, 40).filter((trace) => of(trace, 'shot').length > 0);
    expect(shot.length).toBeGreaterThan(20);
  });
});

test('a shooter knows his weak side', () => {
  const options = createOptions();
  const oddsOf = (hand: 'left' | 'right' | 'both', x: number): number => {
    const matchup = sampleMatchup({ level: '14U' });
    const model = compileChance({ ...matchup, six: matchup.six.map((man) => ({ ...man, hand, offHand: 1.6 })) }, seed);
    const state = createChanceState(model);
    beginTrial(model, state, 0);
    const { motion } = state.bodies;
    for (let agent = 6; agent < model.keeper; agent++) motion[stride * agent + 1] = 40;
    motion[0] = x;
    motion[1] = 7;
    weighInto(options, model, state, 0, motion, 0, 0);
    return options.shotOdds;
  };
  expect(oddsOf('right', 5)).toBeLessThan(0.9 * oddsOf('both', 5));
  expect(oddsOf('right', -5)).toBe(oddsOf('both', -5));
  expect(oddsOf('left', 5)).toBe(oddsOf('both', 5));
  expect(oddsOf('right', 1)).toBe(oddsOf('both', 1));
});

describe('a fake', () => {
  function faked(): { until: number[]; from: number[]; reactions: number[] } {
    const model = compileChance(sampleMatchup({ defenders: { bite: 1 } }), seed);
    const state = createChanceState(model);
    beginTrial(model, state, 0);
    while (state.time < 1) advanceTrial(model, state);
    const { motion } = state.bodies;
    const { holder } = state.ball;
    const toward = holder === 3 ? 1 : 3;
    // On the carrier, in the lane, on the man who is shown the ball, and two who have nothing to do with it.
    const places = [
      [motion[stride * holder]!, motion[stride * holder + 1]! - 1],
      [
        (motion[stride * holder]! + motion[stride * toward]!) / 2,
        (motion[stride * holder + 1]! + motion[stride * toward + 1]!) / 2,
      ],
      [motion[stride * toward]!, motion[stride * toward + 1]! - 2],
      [0, -12],
      [0, 30],
    ];
    places.forEach(([x, y], defender) => {
      motion[stride * (6 + defender)] = x!;
      motion[stride * (6 + defender) + 1] = y!;
    });
    fakeTo(model, state, toward);
    const { bittenFrom, bittenUntil } = state.coverage;
    return {
      until: [...bittenUntil].map((time) => time - state.time),
      from: [...bittenFrom].map((time) => time - state.time),
      reactions: [...model.reaction_byAgent.slice(6, 11)],
    };
  }

  it('is believed by the man on the ball, the man in the lane and the man of him who is shown it, and by nobody else', () => {
    expect(faked().until.map((time) => time > 0)).toEqual([true, true, true, false, false]);
  });

  it('moves nobody before he can have seen it', () => {
    const { from, reactions } = faked();
    for (let defender = 0; defender < 3; defender++) expect(from[defender]).toBeCloseTo(reactions[defender]!, 9);
  });
});
