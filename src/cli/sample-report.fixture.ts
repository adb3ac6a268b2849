import {
  type Interval,
  type LookReport,
  type PlayReport,
  type SchemeReport,
  type Tally,
  turnoverKinds,
} from '../engine/index.ts';

// Reports small enough to check by hand.

function interval(mean: number, half: number): Interval {
  return { mean, low: mean - half, high: mean + half };
}

export const sampleLook: LookReport = {
  kind: 'skip',
  from: 'TR',
  to: 'WL',
  share: 0.62,
  opens: 4.1,
  closes: 4.9,
  completion: 0.864,
  shotValue: 0.31,
  value: 0.412,
  valueLow: 0.38,
  valueHigh: 0.44,
  replays: 50,
  leftBy: { defender: 'll', duty: 'split', lateBy: 0.43 },
};

export function sampleScheme(scheme: string, goals: number, half: number): SchemeReport {
  return {
    scheme,
    trials: 1000,
    goalsPerChance: interval(goals, half),
    shotsPerChance: interval(0.92, 0.03),
    turnoversPerChance: interval(0.4, 0.03),
    turnovers: {
      intercepted: 0.12,
      deflected: 0.02,
      badPass: 0.04,
      dropped: 0.05,
      stripped: 0,
      saved: 0.2,
      blocked: 0.001,
      wide: 0.03,
      rebound: 0.01,
      shotClock: 0,
      outOfBounds: 0,
      failedClear: 0,
    },
    firstShot: { q1: 9.2, median: 12.14, q3: 15.5 },
    shotQuality: 0.31,
    onTarget: 0.6,
    assisted: 0.8,
    play: {
      begun: interval(0.88, 0.02),
      beats: [
        { id: 'drag', share: 0.88 },
        { id: 'low', share: 0.4 },
        { id: 'freeze', share: 0.61 },
      ],
      playPasses: 0.42,
    },
    watched: 200,
    looks: [
      sampleLook,
      {
        ...sampleLook,
        kind: 'shot',
        from: 'P',
        to: 'P',
        value: 0.3,
        leftBy: { defender: null, duty: 'place', lateBy: 0 },
      },
    ],
    own: [],
    back: { mean: 2.4, fastBreak: 0.18 },
  };
}

export function sampleReport(play: string, results: readonly SchemeReport[]): PlayReport {
  return {
    engine: '0.1.0',
    seed: 7,
    inputHash: '0123456789abcdef',
    play,
    side: 'right',
    penalty: 30,
    complexity: { passes: 4, skips: 1, reads: 3, movers: 5 },
    results,
  };
}

export const sampleNames = {
  play: 'Far corner',
  schemes: { 'box-zone': 'Box and one, zone', 'four-rotation-locked': 'Four-man rotation, locked crease' },
} as const;

/** A tally in which only the goals of each trial matter. */
export function sampleTally(goals: readonly number[]): Tally {
  const none = new Uint8Array(goals.length);
  const never = new Float32Array(goals.length).fill(Number.NaN);
  return {
    from: 0,
    to: goals.length,
    goals_byTrial: Uint8Array.from(goals),
    goalOdds_byTrial: Float32Array.from(goals),
    shots_byTrial: none,
    turnovers_byTrial: none,
    firstShot_byTrial: never,
    firstGoal_byTrial: never,
    turnovers: Object.fromEntries(turnoverKinds.map((kind) => [kind, 0])) as Tally['turnovers'],
    shots: 0,
    goals: 0,
    onTarget: 0,
    saves: 0,
    assistedGoals: 0,
    goalOddsSum: 0,
    farShots: 0,
    farGoals: 0,
    assistedShots: 0,
    passes: 0,
    playPasses: 0,
    passesCaught: 0,
    begun: 0,
    begun_byBeat: new Uint32Array(0),
    losses: 0,
    backSum: 0,
    fastBreaks: 0,
  };
}
