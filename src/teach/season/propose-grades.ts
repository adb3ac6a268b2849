import { shrunkShare } from '../../engine/index.ts';
import { changePlayer, type Playbook, type Player } from '../../playbook/index.ts';
import { counted, percent } from '../../render/index.ts';
import { compareGroups } from './compare-groups.ts';
import { shotsByShooter } from './group-numbers.ts';
import type { Proposal } from './proposal.ts';

/** Grades that are proposed to who surely finishes better or worse than his mates: one step from the usual 3, and no more, because shots are not equally hard. */
const proposed = { better: 4, worse: 2 } as const;

/** Shots from which something can be said of a shooter at all. */
const fewestShots = 8;

/** What a team's shooters make of a man-up shot weighs as much as so many shots of one man (an assumption: about a season of his). */
const teamStrength = 30;

/** For each man with enough last shots in our man-ups: whether his grade in shooting should move, or why that cannot be told. */
export function proposeGrades(playbook: Playbook): readonly Proposal[] {
  const shots_byNumber = shotsByShooter((playbook.chances ?? []).filter(({ side }) => side === 'ours'));
  const all = [...shots_byNumber.values()].reduce(
    (sum, { shots, goals }) => ({ shots: sum.shots + shots, goals: sum.goals + goals }),
    { shots: 0, goals: 0 },
  );
  const known = playbook.team.roster.filter(({ number }) => (shots_byNumber.get(number)?.shots ?? 0) >= fewestShots);
  return known.map((player) => proposalFor(player, shots_byNumber.get(player.number)!, all, known.length));
}

interface Shots {
  readonly shots: number;
  readonly goals: number;
}

function proposalFor(player: Player, own: Shots, all: Shots, compared: number): Proposal {
  const mates = { hits: all.goals - own.goals, tries: all.shots - own.shots };
  const { verdict } = compareGroups({ hits: own.goals, tries: own.shots }, mates, compared);
  const grade = player.grades?.shoot ?? 3;
  const told = `${counted(own.goals, 'goal')} of ${counted(own.shots, 'last shot')}; his mates ${mates.hits} of ${mates.tries}.${guessWords(own, mates)}`;
  const nothing = (why: string): Proposal => ({
    id: `shoot ${player.number}`,
    title: `Number ${player.number}`,
    says: `${told} ${why}`,
    changes: [],
    edit: undefined,
  });
  if (verdict === 'unsure') return nothing('Whether he finishes better or worse than they do cannot be told.');
  if (player.measured?.shotSpeedMph !== undefined && player.measured.onGoal !== undefined)
    return nothing(`He finishes surely ${verdict}; but his shots were measured, which counts instead of the grade.`);
  const next = verdict === 'better' ? Math.max(grade, proposed.better) : Math.min(grade, proposed.worse);
  if (next === grade) return nothing(`He finishes surely ${verdict}, and his grade says so already.`);
  return {
    ...nothing(
      `He finishes surely ${verdict} than they do. It may still be that his shots are easier or harder than theirs.`,
    ),
    changes: [`shooting: grade ${grade} becomes ${next}`],
    edit: (current) => {
      const man = current.team.roster.find(({ number }) => number === player.number);
      if (man === undefined) return { kind: 'refused', reason: `The roster has no number ${player.number} any more.` };
      return changePlayer(current, man.number, { ...man, grades: { ...man.grades, shoot: next } });
    },
  };
}

function guessWords(own: Shots, mates: { readonly hits: number; readonly tries: number }): string {
  const all = own.shots + mates.tries;
  const mean = (own.goals + mates.hits) / all;
  if (!(mean > 0 && mean < 1)) return '';
  const { mean: guess } = shrunkShare(own.goals, own.shots, { mean, weight: teamStrength });
  return ` The best guess for his next is ${percent(guess)}.`;
}
