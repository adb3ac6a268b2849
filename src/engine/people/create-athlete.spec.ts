import { describe, expect, it } from 'vitest';
import { centimetres, inches, metres, mph, toMetres, toMph } from '../units.ts';
import { type Athlete, type Level, levels } from './athlete.ts';
import { createAthlete, createKeeper, type Grades, sprintLead, sprintTime } from './create-athlete.ts';
import { levelMean, norms, type Quantity, stickReachOf } from './levels.ts';
import { arrivalTime, reachRadius } from './reach.ts';

const usual = (level: Level) => createAthlete({ level, hand: 'right', crosse: 'short' });

describe('a level', () => {
  const better: readonly [keyof Athlete, 1 | -1][] = [
    ['topSpeed', 1],
    ['drag', 1],
    ['reaction', -1],
    ['stickReach', 1],
    ['passSpeed', 1],
    ['passScatter', -1],
    ['passRelease', -1],
    ['catching', 1],
    ['shotSpeed', 1],
    ['shotScatter', -1],
    ['shotRelease', -1],
    ['offHand', -1],
    ['bite', -1],
  ];

  it.each(better)('has a better %s than the one below it, or as good', (key, sign) => {
    const values = levels.map((level) => sign * (usual(level)[key] as number));
    values.slice(1).forEach((value, k) => {
      expect(value).toBeGreaterThanOrEqual(values[k]!);
    });
    expect(values.at(-1)).toBeGreaterThan(values[0]!);
  });

  it('gives every quantity one number per level', () => {
    for (const norm of Object.values(norms)) {
      expect(norm.means).toHaveLength(levels.length);
      // A grade of 1 or 5 must leave a ratio above 0.
      if (norm.scale === 'ratio') expect(1.6 * norm.spread).toBeLessThan(1);
    }
  });
});

describe('against the stopwatch', () => {
  // Medians over 20 yd, 148 boys of a lacrosse combine in rising age groups (thedynamicathlete.ca 2013-10-18; ages inferred:
  // 11-12, 13-14, 15-16 and 17 on). High school is held against the mean of the last two.
  it.each([
    ['12U', 3.52],
    ['14U', 3.25],
    ['highSchool', (3.03 + 2.91) / 2],
  ] as const)('%s runs 20 yd in %s s, within 3 %%', (level, seconds) => {
    const { topSpeed, drag } = usual(level);
    expect(Math.abs(sprintTime(topSpeed, drag) / seconds - 1)).toBeLessThan(0.03);
  });

  // 40 yd guide: high school 4.9 to 5.6, recreational college men about 5.0 (shotonmac.com, copy of a test-norm page).
  it.each([
    ['highSchool', 4.9, 5.6],
    ['college', 4.9, 5.2],
  ] as const)('%s runs 40 yd in %s to %s s', (level, least, most) => {
    const { topSpeed, drag } = usual(level);
    const seconds = arrivalTime(topSpeed, drag, 0, 0, 0, 0, 40, 0, 0) - sprintLead;
    expect(seconds).toBeGreaterThan(least);
    expect(seconds).toBeLessThan(most);
  });

  // 10 m from a stand, s (from memory). The model's start is too slow for the young: its cause stands in docs/models/people.md.
  it.each([
    ['10U', 2.1, 0.4],
    ['12U', 2.0, 0.25],
    ['14U', 1.9, 0.15],
    ['highSchool', 1.8, 0.1],
    ['college', 1.75, 0.05],
  ] as const)('%s needs %s s for 10 m, give or take %s', (level, seconds, tolerance) => {
    const { topSpeed, drag } = usual(level);
    const ours = arrivalTime(topSpeed, drag, 0, 0, 0, 0, metres(10), 0, 0) - sprintLead;
    expect(Math.abs(ours - seconds)).toBeLessThan(tolerance);
  });

  // Starting acceleration of 17-year-old footballers, m/s2, at 0, 6, 10.8 and 15 km/h (Sonderegger et al. 2016). Known to be
  // too low to explain the sprint times above: high school accelerates 1.3 to 1.7 times as hard here. Asserted so that it stays known.
  it.each([
    [0, 6.01],
    [6, 4.33],
    [10.8, 3.2],
    [15, 2.29],
  ])('high school accelerates harder at %s km/h than footballers did (%s m/s2)', (speedKmh, published) => {
    const { topSpeed, drag } = usual('highSchool');
    const ours = drag * (toMetres(topSpeed) - speedKmh / 3.6);
    expect(ours / published).toBeGreaterThan(1.3);
    expect(ours / published).toBeLessThan(1.7);
  });
});

describe('stickReachOf', () => {
  // Sideways with one hand, body centre line, cm: stature P50 (CDC 2000), Pheasant's arm, crosse less 10 cm.
  it.each([
    [139, 37, 153],
    [139, 52, 191],
    [149, 42, 171],
    [149, 60, 217],
    [164, 42, 178],
    [164, 72, 254],
    [174, 42, 183],
    [174, 72, 259],
    [176, 42, 184],
    [176, 72, 260],
  ])('of a boy of %s cm with %s in is %s cm', (heightCm, crosseIn, reachCm) => {
    expect(Math.abs(100 * toMetres(stickReachOf(centimetres(heightCm), inches(crosseIn))) - reachCm)).toBeLessThan(1);
  });
});

describe('a grade', () => {
  const moves: readonly [keyof Grades, keyof Athlete, Quantity][] = [
    ['speed', 'topSpeed', 'topSpeed'],
    ['speed', 'drag', 'drag'],
    ['pass', 'passSpeed', 'passSpeed'],
    ['shoot', 'shotSpeed', 'shotSpeed'],
    ['shoot', 'shotScatter', 'shotScatter'],
    ['inside', 'shotRelease', 'shotRelease'],
    ['sense', 'reaction', 'reaction'],
  ];

  it.each(moves)(
    'of %s puts %s 1.6 spreads from the mean at its ends and on it in the middle',
    (grade, key, quantity) => {
      const at = (value: number) =>
        createAthlete({ level: '14U', hand: 'left', crosse: 'short', grades: { [grade]: value } })[key] as number;
      const mean = levelMean('14U', quantity);
      const { spread, better } = norms[quantity];
      expect(at(3)).toBe(mean);
      expect(at(5)).toBeCloseTo(mean * (1 + 1.6 * better * spread), 12);
      expect(at(1)).toBeCloseTo(mean * (1 - 1.6 * better * spread), 12);
    },
  );

  it.each(['catch', 'sense'] as const)('of %s keeps odds between 0 and 1 and moves them the right way', (grade) => {
    const at = (value: number) =>
      createAthlete({ level: 'pro', hand: 'left', crosse: 'short', grades: { [grade]: value } });
    expect(at(5).catching).toBeLessThan(1);
    expect(at(5).catching - at(5).bite).toBeGreaterThan(at(1).catching - at(1).bite);
    expect(at(5).bite).toBeGreaterThan(0);
  });

  it.each([0, 5.1, Number.NaN])('outside 1 to 5 is refused: %s', (value) => {
    expect(() => createAthlete({ level: '14U', hand: 'left', crosse: 'short', grades: { speed: value } })).toThrow(
      RangeError,
    );
    expect(() => createKeeper({ level: '14U', grade: value })).toThrow(RangeError);
  });

  it('of a man with both hands finds no weak one', () => {
    expect(createAthlete({ level: '12U', hand: 'both', crosse: 'short' }).offHand).toBe(1);
    expect(usual('12U').offHand).toBeGreaterThan(1.5);
  });
});

describe('a measurement', () => {
  const fourteen = (measured: Parameters<typeof createAthlete>[0]['measured'], grades: Grades = {}) =>
    createAthlete({
      level: '14U',
      hand: 'right',
      crosse: 'short',
      grades,
      ...(measured === undefined ? {} : { measured }),
    });

  it('of many sprints is believed, of one is drawn toward the level', () => {
    const often = fourteen({ sprint20yd: { mean: 2.9, tries: 1000 } });
    expect(sprintTime(often.topSpeed, often.drag)).toBeCloseTo(2.9, 2);
    const once = fourteen({ sprint20yd: { mean: 2.9, tries: 1 } });
    const mean = usual('14U');
    expect(sprintTime(once.topSpeed, once.drag)).toBeGreaterThan(2.9);
    expect(sprintTime(once.topSpeed, once.drag)).toBeLessThan(sprintTime(mean.topSpeed, mean.drag));
  });

  it('counts the level as (noise / spread)^2 tries', () => {
    // Radar: 6 % a shot, players 9 %: 4/9 of a shot at the mean of 53 mph.
    const { shotSpeed } = fourteen({ shotSpeedMph: { mean: 65, tries: 3 } });
    expect(toMph(shotSpeed)).toBeCloseTo((3 * 65 + (4 / 9) * 53) / (3 + 4 / 9), 9);
  });

  it('overrides the grade', () => {
    const measured = { passSpeedMph: { mean: 35, tries: 5 } };
    expect(fourteen(measured, { pass: 5 }).passSpeed).toBe(fourteen(measured, { pass: 1 }).passSpeed);
  });

  it('at the mean of the level is the usual man', () => {
    const { shotSpeed, shotScatter, catching, passRelease } = fourteen({
      shotSpeedMph: { mean: 53, tries: 4 },
      onGoal: { hits: 62, shots: 100 },
      wallBall30s: { mean: 26, tries: 2 },
    });
    const mean = usual('14U');
    expect(shotSpeed).toBeCloseTo(mph(53), 9);
    expect(shotScatter).toBeCloseTo(mean.shotScatter, 9);
    expect(catching).toBeCloseTo(mean.catching, 9);
    expect(passRelease).toBeCloseTo(mean.passRelease, 9);
  });

  it('of a shot chart narrows with hits and widens with misses, never without end', () => {
    const scatter = (hits: number, shots: number) => fourteen({ onGoal: { hits, shots } }).shotScatter;
    expect(scatter(20, 20)).toBeLessThan(scatter(12, 20));
    expect(scatter(5, 20)).toBeGreaterThan(scatter(12, 20));
    expect(scatter(0, 1e6)).toBeCloseTo(3 * usual('14U').shotScatter, 9);
    expect(scatter(0, 0)).toBeCloseTo(usual('14U').shotScatter, 12);
  });

  it('of height lengthens the reach', () => {
    expect(fourteen({ heightCm: 180 }).stickReach - fourteen({ heightCm: 164 }).stickReach).toBeCloseTo(
      0.496 * centimetres(16),
      12,
    );
  });

  it.each([
    { sprint20yd: { mean: Number.NaN, tries: 1 } },
    { sprint20yd: { mean: 3, tries: 0 } },
    { shotSpeedMph: { mean: 500, tries: 3 } },
    { onGoal: { hits: 3, shots: 2 } },
    { heightCm: 17 },
  ])('that cannot be is refused: %o', (measured) => {
    expect(() => fourteen(measured)).toThrow(RangeError);
  });
});

describe('createKeeper', () => {
  it('moves about a yard in .4 s at college', () => {
    // A good keeper goes from crease to crease in under .40 s (laxgoaltending.com, coach timing).
    const { topSpeed, drag } = createKeeper({ level: 'college' });
    expect(reachRadius(topSpeed, drag, 0.4)).toBeGreaterThan(0.9);
    expect(reachRadius(topSpeed, drag, 0.4)).toBeLessThan(1.1);
  });

  it('is better with a better grade', () => {
    const [bad, good] = [createKeeper({ level: '14U', grade: 1 }), createKeeper({ level: '14U', grade: 5 })];
    expect(good.shotReaction).toBeLessThan(bad.shotReaction);
    expect(good.handSpeed).toBeGreaterThan(bad.handSpeed);
    expect(good.bodyReach).toBeGreaterThan(bad.bodyReach);
    expect(good.crosse).toBe('goalkeeper');
  });
});
