import { betterAthlete, type GradedSkill, gradedSkills, type SpotId } from '../engine/index.ts';
import { lineUpFor, type Playbook, toEnginePlay } from '../playbook/index.ts';
import { describedMan, type MatchupChoice, type Practised } from './build-matchup.ts';

/** Something that can be practised. */
export interface PracticeChoice extends Practised {
  /** Grades that are gained, above 0 to 1: below 1 for a man above a grade of 4; of all six the most that one of them gains. */
  readonly grades: number;
}

/** One of the six. */
export interface PractisingMan {
  readonly spot: SpotId;
  /** Jersey number. */
  readonly number: number;
  /** Skills in which he is the best of his level already, or which make nothing of him: nothing to gain there. */
  readonly best: readonly GradedSkill[];
}

export type PracticeChoices =
  | {
      readonly kind: 'choices';
      /** In the order of the spots. */
      readonly men: readonly PractisingMan[];
      readonly unit: readonly PracticeChoice[];
      readonly each: readonly PracticeChoice[];
    }
  /** A plain sentence: what is missing. */
  | { readonly kind: 'refused'; readonly reason: string };

/** What the six whom the playbook puts into a play could practise, all together and each alone: one grade in one skill. RangeError when it has no such play. */
export function practiceChoices(
  playbook: Playbook,
  { play: id, side, level }: Pick<MatchupChoice, 'play' | 'side' | 'level'>,
): PracticeChoices {
  const play = toEnginePlay(playbook, id, side);
  const { players } = lineUpFor(playbook, play);
  if (players.length < play.spots.length) {
    return {
      kind: 'refused',
      reason: `${playbook.team.name} has too few field players for ${play.name}: six must be there`,
    };
  }
  const tried = players.flatMap((player, man) =>
    gradedSkills.map((skill) => ({
      man,
      skill,
      grades: betterAthlete(describedMan(playbook, player, level), skill).grades,
    })),
  );
  const each = tried.filter(({ grades }) => grades > 0);
  return {
    kind: 'choices',
    men: players.map(({ number }, man) => ({
      spot: play.spots[man]!.id,
      number,
      best: tried.filter((one) => one.man === man && one.grades === 0).map(({ skill }) => skill),
    })),
    unit: gradedSkills.flatMap((skill) => {
      const most = Math.max(0, ...each.filter((one) => one.skill === skill).map(({ grades }) => grades));
      return most > 0 ? [{ man: 'all', skill, grades: most } as const] : [];
    }),
    each,
  };
}
