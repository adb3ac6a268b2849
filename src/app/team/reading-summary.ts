import { createAthlete, levelMean, sprintTime, toMph } from '../../engine/index.ts';
import { type Playbook, type Player, toAthlete } from '../../playbook/index.ts';
import { shown } from './cell-text.ts';
import { type MeasuredName, type ReadingName, unitText } from './roster-columns.ts';
import type { Units } from './team-state.ts';
import { levelWords } from './team-words.ts';

/**
 * What readings count as, in a sentence: their mean, drawn toward what is usual at his level, the more the fewer they are.
 * Undefined without readings, and for readings that nobody can have (the roster says so itself).
 */
export function readingSummary(
  playbook: Playbook,
  player: Player,
  name: MeasuredName,
  units: Units,
): string | undefined {
  const value = player.measured?.[name];
  if (value === undefined) return undefined;
  const level = player.level ?? playbook.team.level;
  const usual = `usual at ${levelWords[level]}`;
  try {
    // One measurement alone: the others, and the grades, say nothing about it.
    const athlete = createAthlete(toAthlete(playbook, { ...player, grades: undefined, measured: { [name]: value } }));
    switch (name) {
      case 'sprint20ydSeconds': {
        const usualTime = sprintTime(levelMean(level, 'topSpeed'), levelMean(level, 'drag'));
        return drawn(value as number[], sprintTime(athlete.topSpeed, athlete.drag), usualTime, name, units, usual);
      }
      case 'passSpeedMph':
        return drawn(
          value as number[],
          toMph(athlete.passSpeed),
          toMph(levelMean(level, 'passSpeed')),
          name,
          units,
          usual,
        );
      case 'shotSpeedMph':
        return drawn(
          value as number[],
          toMph(athlete.shotSpeed),
          toMph(levelMean(level, 'shotSpeed')),
          name,
          units,
          usual,
        );
      case 'wallBallIn30s': {
        const odds = Math.round(athlete.catching * 100);
        return `${triesText(value as number[], 'count', units)} Counts as ${odds} of 100 easy passes caught; ${Math.round(levelMean(level, 'catching') * 100)} are ${usual}.`;
      }
      case 'onGoal':
        return aimText(athlete.shotScatter / levelMean(level, 'shotScatter'), usual);
      case 'heightCm':
        return `Reaches ${shown(athlete.stickReach, 'count', units.speed)} yd with his stick.`;
      default:
        return exhaustive(name);
    }
  } catch (thrown) {
    if (thrown instanceof RangeError) return undefined;
    throw thrown;
  }
}

function drawn(
  values: readonly number[],
  counts: number,
  usualValue: number,
  name: ReadingName,
  units: Units,
  usual: string,
): string {
  const kind = name === 'sprint20ydSeconds' ? 'seconds' : 'speed';
  const text = (value: number): string => `${shown(value, kind, units.speed)} ${unitText(kind, units.speed)}`;
  return `${triesText(values, kind, units)} Counts as ${text(counts)}: drawn toward ${text(usualValue)}, which is ${usual}, the less the more readings there are.`;
}

function triesText(values: readonly number[], kind: 'seconds' | 'speed' | 'count', units: Units): string {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const text = `${shown(mean, kind, units.speed)} ${unitText(kind, units.speed)}`;
  return values.length === 1 ? `One reading: ${text}.` : `${values.length} readings, mean ${text}.`;
}

function aimText(scatterRatio: number, usual: string): string {
  const percent = Math.round(Math.abs(1 - scatterRatio) * 100);
  if (percent === 0) return `His shots scatter as is ${usual}.`;
  return `Counts as shots that scatter ${percent} % ${scatterRatio < 1 ? 'less' : 'more'} than is ${usual}; few shots count little.`;
}

function exhaustive(name: never): never {
  throw new TypeError(`unknown measurement: ${String(name)}`);
}
