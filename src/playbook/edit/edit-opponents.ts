import { type DisciplineName, schemeById } from '../../engine/index.ts';
import { knownSchemes } from '../known-schemes.ts';
import { limits } from '../limits.ts';
import type { Opponent, Playbook } from '../schema.ts';
import { editedPlaybook, type PlaybookEdit, type Refused, refused } from './edit-result.ts';
import { freshId } from './fresh-id.ts';

/** The name under which discipline is said of all defenders. */
export const everyDefender = 'all';
/** The most that a scheme can weigh against the others. */
const mostWeight = 1000;

/** A new opponent of whom nothing is known yet. */
export function addOpponent(playbook: Playbook, name: string): PlaybookEdit {
  const opponents = playbook.opponents ?? [];
  const refusal = opponentNameRefusal(name);
  if (refusal !== undefined) return refusal;
  if (opponents.length >= limits.opponents) return refused(`A playbook holds at most ${limits.opponents} opponents.`);
  // What is named after "against" is a scheme or an opponent, so none goes by the other's id.
  const taken = [...opponents, ...(playbook.schemes ?? [])].map((each) => each.id);
  const id = freshId(name, [...taken, ...knownSchemes], 'opponent');
  return editedPlaybook({ ...playbook, opponents: [...opponents, { id, name: name.trim() }] }, [], id);
}

export function renameOpponent(playbook: Playbook, id: string, name: string): PlaybookEdit {
  const refusal = opponentNameRefusal(name);
  if (refusal !== undefined) return refusal;
  return changeOpponent(playbook, id, (opponent) =>
    opponent.name === name.trim() ? opponent : { ...opponent, name: name.trim() },
  );
}

export function removeOpponent(playbook: Playbook, id: string): PlaybookEdit {
  const opponents = (playbook.opponents ?? []).filter((each) => each.id !== id);
  if (opponents.length === (playbook.opponents ?? []).length) return noOpponent(id);
  return editedPlaybook({ ...playbook, opponents });
}

/** How much a scheme weighs among those that the opponent is believed to play; 0 takes it out. */
export function setSchemeWeight(playbook: Playbook, id: string, scheme: string, weight: number): PlaybookEdit {
  if (!(weight >= 0 && weight <= mostWeight)) return refused(`A weight is a number from 0 to ${mostWeight}.`);
  if (weight > 0 && menOfScheme(playbook, scheme) === undefined) return refused(`No scheme is called "${scheme}".`);
  return changeOpponent(playbook, id, (opponent) => {
    const before = opponent.schemes ?? {};
    if ((Object.hasOwn(before, scheme) ? before[scheme] : 0) === weight) return opponent;
    const { [scheme]: _, ...others } = before;
    return withRecord(opponent, 'schemes', weight === 0 ? others : { ...before, [scheme]: weight });
  });
}

/** How well a defender plays his part, or `everyDefender`; undefined says nothing of him. */
export function setDiscipline(
  playbook: Playbook,
  id: string,
  defender: string,
  name: DisciplineName | undefined,
): PlaybookEdit {
  const opponent = playbook.opponents?.find((each) => each.id === id);
  if (opponent === undefined) return noOpponent(id);
  if (name !== undefined && defender !== everyDefender && !menOfOpponent(playbook, opponent).includes(defender))
    return refused(`None of the schemes of ${opponent.name} has a defender "${defender}".`);
  return changeOpponent(playbook, id, () => {
    const before = opponent.discipline ?? {};
    if (before[defender] === name) return opponent;
    const { [defender]: _, ...others } = before;
    return withRecord(opponent, 'discipline', name === undefined ? others : { ...before, [defender]: name });
  });
}

/** What a coach wants to remember of an opponent; an empty text takes it out. */
export function noteOpponent(playbook: Playbook, id: string, notes: string): PlaybookEdit {
  if (notes.length > limits.note) return refused(`A note has at most ${limits.note} letters.`);
  return changeOpponent(playbook, id, (opponent) => {
    if ((opponent.notes ?? '') === notes) return opponent;
    const { notes: _, ...rest } = opponent;
    return notes === '' ? rest : { ...rest, notes };
  });
}

/** The defenders of a scheme, built in or own; undefined when nobody knows it. */
export function menOfScheme(playbook: Playbook, id: string): readonly string[] | undefined {
  const own = playbook.schemes?.find((scheme) => scheme.id === id);
  return own === undefined ? schemeById(id)?.names : Object.keys(own.men);
}

/** Every defender whom one of the schemes has that the opponent is believed to play, each once. */
export function menOfOpponent(playbook: Playbook, opponent: Opponent): readonly string[] {
  return [...new Set(Object.keys(opponent.schemes ?? {}).flatMap((scheme) => menOfScheme(playbook, scheme) ?? []))];
}

function withRecord<K extends 'schemes' | 'discipline'>(
  opponent: Opponent,
  key: K,
  record: NonNullable<Opponent[K]>,
): Opponent {
  if (Object.keys(record).length > 0) return { ...opponent, [key]: record };
  const { [key]: _, ...rest } = opponent;
  return rest as Opponent;
}

function changeOpponent(playbook: Playbook, id: string, change: (opponent: Opponent) => Opponent): PlaybookEdit {
  const opponent = playbook.opponents?.find((each) => each.id === id);
  if (opponent === undefined) return noOpponent(id);
  const changed = change(opponent);
  if (changed === opponent) return editedPlaybook(playbook);
  const opponents = playbook.opponents!.map((each) => (each === opponent ? changed : each));
  return editedPlaybook({ ...playbook, opponents });
}

function opponentNameRefusal(name: string): Refused | undefined {
  const { length } = name.trim();
  return length > 0 && length <= limits.name
    ? undefined
    : refused(`An opponent needs a name of at most ${limits.name} letters.`);
}

function noOpponent(id: string): Refused {
  return refused(`The playbook has no opponent "${id}" any more.`);
}
