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
    const weighed = withRecord(opponent, 'schemes', weight === 0 ? others : { ...before, [scheme]: weight });
    return alsoBefore(weighed, scheme, before, weight);
  });
}

/**
 * What was believed before marks, moved by what a coach says now: the odds of a scheme beside the others change by as much as those that he changed, so that the
 * same marks lead to what he said (Bayes: the odds after are the odds before times what was seen).
 */
function alsoBefore(
  opponent: Opponent,
  scheme: string,
  was: NonNullable<Opponent['schemes']>,
  weight: number,
): Opponent {
  if (opponent.before === undefined) return opponent;
  const { [scheme]: old = 0, ...others } = opponent.before;
  const from = Object.hasOwn(was, scheme) ? was[scheme]! : 0;
  const scale = sumOf(others) / Math.max(1e-9, sumOf(was) - from);
  // One that was not in the mix comes in with the share that he gives it; one that is taken out is as any that nothing is written of.
  const next = from > 0 && old > 0 ? (old * weight) / from : weight * scale;
  const { before: _, ...rest } = opponent;
  if (weight === 0) return Object.keys(others).length > 0 ? { ...rest, before: others } : rest;
  return { ...rest, before: { ...others, [scheme]: Math.min(mostWeight, fewDigits(next)) } };
}

/** How often a scheme is played, as a share of all above 0 and below 1: its weight is moved, those of the others stay beside each other. */
export function setSchemeShare(playbook: Playbook, id: string, scheme: string, share: number): PlaybookEdit {
  if (!(share > 0 && share < 1)) return refused('A share is above 0 and below 100 %.');
  const { [scheme]: was, ...others } = playbook.opponents?.find((each) => each.id === id)?.schemes ?? {};
  const rest = sumOf(others);
  if (was === undefined || rest === 0) return refused('Of one scheme alone nothing can be shared out.');
  const weight = fewDigits((share / (1 - share)) * rest);
  if (weight <= mostWeight) return setSchemeWeight(playbook, id, scheme, weight);
  // So much more often that the others have to give way.
  const smaller = Object.fromEntries(Object.entries(others).map(([one, each]) => [one, fewDigits(each / weight)]));
  const scaled = changeOpponent(playbook, id, (opponent) => ({
    ...opponent,
    schemes: { ...smaller, [scheme]: fewDigits(was / weight) },
  }));
  return scaled.kind === 'refused' ? scaled : setSchemeWeight(scaled.playbook, id, scheme, 1);
}

/** What was believed of an opponent before any marks, each scheme with its weight; undefined goes back to what the entry says. */
export function setSchemesBefore(
  playbook: Playbook,
  id: string,
  weights: Readonly<Record<string, number>> | undefined,
): PlaybookEdit {
  const given = Object.values(weights ?? { any: 1 });
  if (!given.every((weight) => weight >= 0 && weight <= mostWeight))
    return refused(`A weight is a number from 0 to ${mostWeight}.`);
  if (sumOf(given) === 0) return refused('Something must be possible: one scheme needs a weight above 0.');
  return changeOpponent(playbook, id, ({ before: _, ...opponent }) => ({
    ...opponent,
    ...(weights !== undefined && { before: { ...weights } }),
  }));
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

function sumOf(values: Readonly<Record<string, number>> | readonly number[]): number {
  return Object.values(values).reduce((sum, value) => sum + value, 0);
}

/** As a file can be read, and never nothing. */
function fewDigits(weight: number): number {
  return Math.max(1e-4, Number(weight.toPrecision(6)));
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
