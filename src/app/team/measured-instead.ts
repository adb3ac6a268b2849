import type { Player } from '../../playbook/index.ts';
import type { Skill } from './team-words.ts';

/** How far readings count in place of a grade, and the sentence that says so. */
export interface MeasuredInstead {
  readonly extent: 'whole' | 'part';
  readonly sentence: string;
}

/** What of a grade is measured, by which; undefined where the grade counts alone. As `createAthlete` takes them. */
export function measuredInstead({ measured }: Player, skill: Skill): MeasuredInstead | undefined {
  if (measured === undefined) return undefined;
  switch (skill) {
    case 'speed':
      return measured.sprint20ydSeconds && whole('His sprints count instead of this grade.');
    case 'catch':
      return measured.wallBallIn30s && whole('His wall ball counts instead of this grade.');
    case 'handle':
      return measured.wallBallIn30s && whole('His wall ball counts instead of this grade.');
    case 'feed':
      return (
        measured.wallBallIn30s &&
        part('His wall ball says how quickly he passes on; this grade still says how well he aims.')
      );
    case 'pass':
      return (
        measured.passSpeedMph && part('His readings say how fast he passes; this grade still says how well he aims.')
      );
    case 'shoot':
      if (measured.shotSpeedMph && measured.onGoal)
        return whole('His shot readings and his shots on goal count instead of this grade.');
      if (measured.shotSpeedMph)
        return part('His readings say how fast he shoots; this grade still says how well he aims.');
      return (
        measured.onGoal && part('His shots on goal say how well he aims; this grade still says how fast he shoots.')
      );
    case 'inside':
    case 'offHand':
    case 'sense':
      return undefined;
    default:
      return exhaustive(skill);
  }
}

function whole(sentence: string): MeasuredInstead {
  return { extent: 'whole', sentence };
}

function part(sentence: string): MeasuredInstead {
  return { extent: 'part', sentence };
}

function exhaustive(skill: never): never {
  throw new TypeError(`unknown skill: ${String(skill)}`);
}
