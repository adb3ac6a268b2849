import type {
  Chance,
  Opponent,
  OwnSet,
  Playbook,
  PlayEntry,
  Player,
  Practice,
  QuizEntry,
  SchemeEntry,
} from '../../playbook/index.ts';

/** The lists of a playbook whose items are kept one by one, so that two people can change two of them at once. */
export interface EntityLists {
  readonly roster: Player;
  readonly sets: OwnSet;
  readonly plays: PlayEntry;
  readonly schemes: SchemeEntry;
  readonly opponents: Opponent;
  readonly practices: Practice;
  readonly quizzes: QuizEntry;
  readonly chances: Chance;
}

export type ListName = keyof EntityLists;
export type Entity = EntityLists[ListName];

export const listNames = [
  'roster',
  'sets',
  'plays',
  'schemes',
  'opponents',
  'practices',
  'quizzes',
  'chances',
] as const satisfies readonly ListName[];

/** The lists that a playbook may leave out. */
export const optionalLists = [
  'sets',
  'schemes',
  'opponents',
  'practices',
  'quizzes',
  'chances',
] as const satisfies readonly ListName[];

/** The items of a list; none when the playbook leaves it out. */
export function entitiesOf(playbook: Playbook, list: ListName): readonly Entity[] {
  return (list === 'roster' ? playbook.team.roster : playbook[list]) ?? [];
}

/** What people call an entity by: its id, or the jersey number. Two may have the same one while they are typed. */
export function nameOfEntity(entity: Entity): string {
  return 'number' in entity ? String(entity.number) : entity.id;
}
