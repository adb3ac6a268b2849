import { shrunkShare, wilsonInterval } from '../../engine/index.ts';
import { changePlayer, type Playbook, type Player, shotResults } from '../../playbook/index.ts';
import { counted, percent } from '../../render/index.ts';
import { compareGroups, type GroupComparison } from './compare-groups.ts';
import { shotsByShooter } from './group-numbers.ts';
import { isUneven, type Naming, namingOf, namingWords } from './naming.ts';
import type { Proposal } from './proposal.ts';

/** Grades that are proposed to who surely finishes better or worse than his mates: one step from the usual 3, and no more, because shots are not equally hard. */
const proposed = { better: 4, worse: 2 } as const;

/** Shots from which something can be said of a shooter at all. */
const fewestShots = 8;

/** What a team's shooters make of a man-up shot weighs as much as so many shots of one man (an assumption: about a season of his). */
const teamStrength = 30;

/** No team makes a goal of more of its last shots than this: where it surely seems so, misses were left out (an assumption: the best college teams make about half). */
const mostGoals = 0.6;

/** The proposal that says why nothing follows for any shooter. */
export const shootersId = 'shooters';

/**
 * For each man with enough last shots in our chances: whether his grade in shooting should move, or why that cannot be told. Where shooters are named mostly of goals, as coaches' tables do, nothing is
 * concluded of anybody: one sentence says why.
 */
export function proposeGrades(playbook: Playbook): readonly Proposal[] {
  const shots = (playbook.chances ?? []).filter(({ side, result }) => side === 'ours' && shotResults.has(result));
  const shots_byNumber = shotsByShooter(shots);
  const known = playbook.team.roster.filter(({ number }) => (shots_byNumber.get(number)?.shots ?? 0) >= fewestShots);
  if (known.length === 0) return [];
  const naming = namingOf(shots, ({ scorer }) => scorer !== undefined);
  const why = whyNothing(naming);
  if (why !== undefined) return [silent(shootersId, 'Shooters', why)];
  const ground = groundOf(naming, known.length);
  return known.map((player) => proposalFor(player, shots_byNumber.get(player.number)!, ground));
}

interface Shots {
  readonly shots: number;
  readonly goals: number;
}

/** What a man is held against. */
interface Ground {
  /** Last shots whose shooter is named. */
  readonly all: Shots;
  /** Those whose shooter is not. */
  readonly unnamed: { readonly goals: number; readonly misses: number };
  /** How many men are held against their mates. */
  readonly compared: number;
}

/** Why nothing follows for anybody; undefined where something may. */
function whyNothing(naming: Naming): string | undefined {
  const { goals, others } = naming;
  const much = 'Goals alone do not say who shoots well: eight may have taken eight shots or thirty. ';
  const remedy = 'Write the shooter down for shots that were saved, wide, blocked or off the pipe too.';
  if (others.all === 0 || wilsonInterval(goals.all, goals.all + others.all).low > mostGoals)
    return `Of ${counted(goals.all + others.all, 'last shot')} written down ${goals.all} are goals: misses seem to be left out. ${much}${remedy}`;
  if (isUneven(naming))
    return `The shooter is named for ${namingWords(naming, 'last shots that missed')}. ${goals.named > others.named ? much : ''}So nothing is concluded of any shooter. ${remedy}`;
  return undefined;
}

function groundOf({ goals, others }: Naming, compared: number): Ground {
  return {
    all: { shots: goals.named + others.named, goals: goals.named },
    unnamed: { goals: goals.all - goals.named, misses: others.all - others.named },
    compared,
  };
}

function proposalFor(player: Player, own: Shots, ground: Ground): Proposal {
  const verdict = verdictOf(own, ground);
  const grade = player.grades?.shoot ?? 3;
  const told = toldOf(own, ground);
  const nothing = (why: string): Proposal =>
    silent(`shoot ${player.number}`, `Number ${player.number}`, `${told} ${why}`);
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

/** A proposal from which nothing follows. */
function silent(id: string, title: string, says: string): Proposal {
  return { id, title, says, changes: [], edit: undefined };
}

/** Better or worse only if it stays so whoever took the shots whose shooter is not named: his the ones that speak against it, his mates' the others. */
function verdictOf(own: Shots, { all, unnamed, compared }: Ground): GroupComparison['verdict'] {
  const mates = { hits: all.goals - own.goals, tries: all.shots - own.shots };
  const { verdict } = compareGroups({ hits: own.goals, tries: own.shots }, mates, compared);
  if (verdict === 'unsure') return verdict;
  const { goals, misses } = unnamed;
  const worst =
    verdict === 'better'
      ? compareGroups(
          { hits: own.goals, tries: own.shots + misses },
          { hits: mates.hits + goals, tries: mates.tries + goals },
          compared,
        )
      : compareGroups(
          { hits: own.goals + goals, tries: own.shots + goals },
          { hits: mates.hits, tries: mates.tries + misses },
          compared,
        );
  return worst.verdict === verdict ? verdict : 'unsure';
}

function toldOf(own: Shots, { all, unnamed }: Ground): string {
  const mates = { goals: all.goals - own.goals, shots: all.shots - own.shots };
  const counts = `${counted(own.goals, 'goal')} of ${counted(own.shots, 'last shot')}; his mates ${mates.goals} of ${mates.shots}.`;
  const missing = unnamed.goals + unnamed.misses;
  const rest = missing === 0 ? '' : ` Of ${counted(missing, 'last shot')} more nobody wrote down whose they were.`;
  const mean = all.goals / all.shots;
  if (!(mean > 0 && mean < 1)) return `${counts}${rest}`;
  const { mean: guess } = shrunkShare(own.goals, own.shots, { mean, weight: teamStrength });
  return `${counts}${rest} The best guess for his next is ${percent(guess)}.`;
}
