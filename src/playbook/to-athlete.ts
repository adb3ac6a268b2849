import { type AthleteDescription, createAthlete, type Measured, type Sample } from '../engine/index.ts';
import type { Playbook, Player } from './schema.ts';

/** A player as `createAthlete` takes him: of his own level when he has one, else of the team's. */
export function toAthlete(playbook: Playbook, player: Player): AthleteDescription {
  const measured = player.measured && toMeasured(player.measured);
  return {
    level: player.level ?? playbook.team.level,
    hand: player.hand,
    crosse: player.crosse ?? 'short',
    ...(player.grades && { grades: withoutUndefined(player.grades) }),
    ...(measured && { measured }),
  };
}

/** Names of those of a player's readings that nobody can have measured: a slip, or another unit. Each is looked at alone. */
export function oddReadings(playbook: Playbook, player: Player): readonly string[] {
  return Object.entries(player.measured ?? {}).flatMap(([name, value]) =>
    value === undefined || canBe(playbook, { ...player, measured: { [name]: value } }) ? [] : [name],
  );
}

function canBe(playbook: Playbook, player: Player): boolean {
  try {
    createAthlete(toAthlete(playbook, player));
    return true;
  } catch (thrown) {
    if (thrown instanceof RangeError) return false;
    throw thrown;
  }
}

function toMeasured(measured: NonNullable<Player['measured']>): Measured {
  const { sprint20ydSeconds, passSpeedMph, shotSpeedMph, wallBallIn30s, onGoal, heightCm } = measured;
  return {
    ...(sprint20ydSeconds && { sprint20yd: sampleOf(sprint20ydSeconds) }),
    ...(passSpeedMph && { passSpeedMph: sampleOf(passSpeedMph) }),
    ...(shotSpeedMph && { shotSpeedMph: sampleOf(shotSpeedMph) }),
    ...(wallBallIn30s && { wallBall30s: sampleOf(wallBallIn30s) }),
    ...(onGoal && { onGoal }),
    ...(heightCm !== undefined && { heightCm }),
  };
}

function sampleOf(readings: readonly number[]): Sample {
  return { mean: readings.reduce((sum, reading) => sum + reading, 0) / readings.length, tries: readings.length };
}

/** Zod's optional fields may hold undefined, which the engine's optional fields may not. */
function withoutUndefined<T extends object>(values: T): { [K in keyof T]: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]: Exclude<T[K], undefined>;
  };
}
