import type { Playbook } from '../../playbook/index.ts';

/** Letters that a part of a name must have to be told: shorter ones are in every other word. */
const shortest = 3;

/** Short names inside the file that hold a part of a player's name: they stay in a file without names, because other parts go by them. */
export function idsWithNames({
  team,
  plays,
  sets,
  schemes,
  opponents,
  practices,
  quizzes,
  chances,
}: Playbook): readonly string[] {
  const parts = team.roster.flatMap(({ name }) => wordsIn(name)).filter((word) => word.length >= shortest);
  const known = new Set(parts);
  const ids = [
    ...plays,
    ...(sets ?? []),
    ...(schemes ?? []),
    ...(opponents ?? []),
    ...(practices ?? []),
    ...(quizzes ?? []),
    ...(chances ?? []),
  ].map(({ id }) => id);
  return ids.filter((id) => wordsIn(id).some((word) => known.has(word)));
}

function wordsIn(text: string): readonly string[] {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.split(/[^\p{L}]+/u).filter((word) => word !== '');
}
