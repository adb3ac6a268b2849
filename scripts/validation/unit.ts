import {
  type Athlete,
  createAthlete,
  createKeeper,
  type DisciplineName,
  disciplines,
  type Level,
  type Matchup,
  type PenaltyPlan,
  type Play,
  type Scheme,
} from '../../src/engine/index.ts';

/** A chance of usual men of one level on both sides. */
export interface UsualChance {
  readonly play: Play;
  readonly scheme: Scheme;
  readonly level: Level;
  readonly discipline: DisciplineName;
  /** Seconds of penalty. */
  readonly seconds: number;
  /** Where the ball is put in play: outside the box when absent. */
  readonly start?: PenaltyPlan['start'];
}

/**
 * The matchup of a usual unit: the level's preset at every spot, hands by "stick to the middle" (righties in the middle), poles and short
 * sticks as the scheme says, everyone of one discipline, one releasable penalty from its restart, no shot clock.
 * A shutoff is meant for the first spot that asks most for shooting.
 */
export function usualMatchup({ play, scheme, level, discipline, seconds, start = 'restart' }: UsualChance): Matchup {
  const defenders = scheme.names.map((_, index) => defender(level, scheme.shortSticks.includes(index)));
  return {
    play,
    six: play.spots.map(({ hand }) =>
      createAthlete({ level, hand: hand === 'either' ? 'right' : hand, crosse: 'short' }),
    ),
    scheme,
    defenders,
    discipline: defenders.map(() => disciplines[discipline]),
    keeper: createKeeper({ level }),
    released: defender(level, false),
    penalty: { seconds, releasable: true, start, shotClock: null },
    sense: 1,
    star: bestShooter(play),
  };
}

function defender(level: Level, short: boolean): Athlete {
  return createAthlete({ level, hand: 'right', crosse: short ? 'short' : 'pole' });
}

function bestShooter({ spots }: Play): string {
  return spots.reduce((best, spot) => (spot.needs.shoot > best.needs.shoot ? spot : best)).id;
}
