import type { Player } from '../../playbook/index.ts';
import { type Facts, factsOf, line } from './difference.ts';
import { levelNames } from './level-names.ts';

const handWords: Readonly<Record<Player['hand'], string>> = { left: 'left', right: 'right', both: 'both' };
const crosseWords = { short: 'short', pole: 'long pole', goalkeeper: 'goalkeeper’s' } as const;
const roleWords = {
  attack: 'attack',
  midfield: 'midfield',
  defense: 'defense',
  lsm: 'long-stick midfield',
  goalkeeper: 'goalkeeper',
} as const;
const gradeNames: Readonly<Record<keyof NonNullable<Player['grades']>, string>> = {
  speed: 'Speed',
  catch: 'Catching',
  pass: 'Passing',
  feed: 'Feeding',
  shoot: 'Shooting',
  inside: 'Inside finishing',
  handle: 'Stick handling',
  offHand: 'Off hand',
  sense: 'Sense of the game',
};

/** All that is known of a player, in a coach's words. */
export function playerFacts(player: Player): Facts {
  const { grades = {}, measured = {} } = player;
  const { onGoal } = measured;
  return factsOf([
    ['Number', [String(player.number)]],
    ['Name', line(player.name)],
    ['Hand', [handWords[player.hand]]],
    ['Stick', line(player.crosse && crosseWords[player.crosse])],
    ['Role', line(player.role && roleWords[player.role])],
    ['Level', line(player.level && levelNames[player.level])],
    ...Object.entries(gradeNames).map(([key, what]) => {
      const grade = grades[key as keyof typeof grades];
      return [`${what}, grade`, line(grade === undefined ? undefined : String(grade))] as const;
    }),
    ['20-yard sprint', readings(measured.sprint20ydSeconds, 's')],
    ['Pass speed', readings(measured.passSpeedMph, 'mph')],
    ['Shot speed', readings(measured.shotSpeedMph, 'mph')],
    ['Wall ball in 30 seconds', readings(measured.wallBallIn30s, 'catches')],
    ['Shots on goal', line(onGoal && `${onGoal.hits} of ${onGoal.shots}`)],
    ['Height', line(measured.heightCm === undefined ? undefined : `${measured.heightCm} cm`)],
    ['Absent', line(player.absent === true ? 'yes' : undefined)],
    ['Notes', line(player.notes)],
  ]);
}

function readings(values: readonly number[] | undefined, unit: string): readonly string[] {
  return (values ?? []).map((value) => `${value} ${unit}`);
}
