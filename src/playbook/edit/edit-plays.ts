import { type OffenseSet, type Spot, sets } from '../../engine/index.ts';
import { limits } from '../limits.ts';
import { ownSpots } from '../play/read-set.ts';
import type { OwnSet, Playbook, PlayEntry } from '../schema.ts';
import {
  type EditedPlaybook,
  editedPlaybook,
  type PlaybookEdit,
  type PlayEdit,
  type Refused,
  refused,
} from './edit-result.ts';
import { freshId } from './fresh-id.ts';
import { mirrorEntry } from './mirror-entry.ts';
import { groundOf, type PlayGround } from './play-ground.ts';

/** Change one play of a playbook; the other plays, and everything else, stay the same objects. */
export function editPlay(
  playbook: Playbook,
  id: string,
  edit: (play: PlayEntry, ground: PlayGround) => PlayEdit,
): PlaybookEdit {
  const play = playbook.plays.find((each) => each.id === id);
  if (play === undefined) return noPlay(id);
  const edited = edit(play, groundOf(playbook));
  if (edited.kind === 'refused') return edited;
  return editedPlaybook(withPlay(playbook, play, edited.play), edited.also);
}

/** A new play from a set, built in or own: the ball in the hands of the man who handles it best, one empty beat. */
export function newPlay(playbook: Playbook, name: string, set: string): PlaybookEdit {
  const refusal = nameRefusal(name) ?? roomRefusal(playbook);
  if (refusal !== undefined) return refusal;
  const spots = spotsOfSet(playbook, set);
  if (spots === undefined) return refused(`No set is called "${set}".`);
  const id = freshPlayId(playbook, name);
  const ball = [...spots].sort((a, b) => b.needs.handle - a.needs.handle)[0]!.id;
  const { field } = groundOf(playbook);
  const play: PlayEntry = {
    id,
    name: name.trim(),
    set,
    start: { ball, restart: [field.boxHalfWidth + restartOutside, restartHeight] },
    beats: [{ id: 'step-1', on: 'start', do: [] }],
    reset: { ball, then: 'again' },
  };
  return addPlay(playbook, play);
}

/** Where a new play is put in play: just outside the box, at the height of the wings. Yards. */
const restartOutside = 1;
const restartHeight = 12;

/** A copy under a new name, after the original. */
export function copyPlay(playbook: Playbook, id: string, name?: string): PlaybookEdit {
  const play = playbook.plays.find((each) => each.id === id);
  if (play === undefined) return noPlay(id);
  const named = name ?? copyName(playbook, play.name, 'copy');
  const refusal = nameRefusal(named) ?? roomRefusal(playbook);
  if (refusal !== undefined) return refusal;
  return addPlay(playbook, { ...play, id: freshPlayId(playbook, named), name: named.trim() }, play);
}

/** The play turned over to the other side, as a play of its own after the original. */
export function copyMirrored(playbook: Playbook, id: string, name?: string): PlaybookEdit {
  const play = playbook.plays.find((each) => each.id === id);
  if (play === undefined) return noPlay(id);
  const mirrored = mirrorEntry(play, groundOf(playbook));
  if (mirrored.kind === 'refused') return mirrored;
  const named = name ?? copyName(playbook, play.name, 'other side');
  const refusal = nameRefusal(named) ?? roomRefusal(playbook);
  if (refusal !== undefined) return refusal;
  return addPlay(playbook, { ...mirrored.play, id: freshPlayId(playbook, named), name: named.trim() }, play);
}

/** Call a play otherwise. Its id stays, so that nothing that names it is lost. */
export function renamePlay(playbook: Playbook, id: string, name: string): PlaybookEdit {
  const refusal = nameRefusal(name);
  if (refusal !== undefined) return refusal;
  return setField(playbook, id, (play) => (play.name === name.trim() ? play : { ...play, name: name.trim() }));
}

/** The tags of a play: each once, without blanks round it, in the order given. */
export function tagPlay(playbook: Playbook, id: string, tags: readonly string[]): PlaybookEdit {
  const wanted = [...new Set(tags.map((tag) => tag.trim()).filter((tag) => tag !== ''))];
  if (wanted.length > limits.tags) return refused(`A play has at most ${limits.tags} tags.`);
  const long = wanted.find((tag) => tag.length > limits.tag);
  if (long !== undefined) return refused(`A tag has at most ${limits.tag} letters.`);
  return setField(playbook, id, (play) => {
    const before = play.tags ?? [];
    if (before.length === wanted.length && before.every((tag, i) => tag === wanted[i])) return play;
    if (wanted.length > 0) return { ...play, tags: wanted };
    const { tags: _, ...rest } = play;
    return rest;
  });
}

/** Put a play away, or take it out again. */
export function archivePlay(playbook: Playbook, id: string, archived: boolean): PlaybookEdit {
  return setField(playbook, id, (play) => {
    if ((play.archived === true) === archived) return play;
    if (archived) return { ...play, archived };
    const { archived: _, ...rest } = play;
    return rest;
  });
}

/** What a coach wants to remember of a play; an empty text takes it out. */
export function notePlay(playbook: Playbook, id: string, notes: string): PlaybookEdit {
  if (notes.length > limits.note) return refused(`A note has at most ${limits.note} letters.`);
  return setField(playbook, id, (play) => {
    if ((play.notes ?? '') === notes) return play;
    if (notes !== '') return { ...play, notes };
    const { notes: _, ...rest } = play;
    return rest;
  });
}

export function deletePlay(playbook: Playbook, id: string): PlaybookEdit {
  if (!playbook.plays.some((play) => play.id === id)) return noPlay(id);
  return editedPlaybook({ ...playbook, plays: playbook.plays.filter((play) => play.id !== id) });
}

/** Move a play to another place in the list. */
export function movePlay(playbook: Playbook, id: string, to: number): PlaybookEdit {
  const play = playbook.plays.find((each) => each.id === id);
  if (play === undefined) return noPlay(id);
  const others = playbook.plays.filter((each) => each !== play);
  const place = Math.max(0, Math.min(others.length, to));
  return editedPlaybook({ ...playbook, plays: [...others.slice(0, place), play, ...others.slice(place)] });
}

/** The spots of a set by its id, own sets first; undefined when there is none. */
export function spotsOfSet(playbook: Pick<Playbook, 'sets'>, id: string): readonly Spot[] | undefined {
  const own: OwnSet | undefined = playbook.sets?.find((set) => set.id === id);
  if (own !== undefined) return ownSpots(own);
  const builtIn: OffenseSet | undefined = Object.hasOwn(sets, id) ? sets[id] : undefined;
  return builtIn?.spots;
}

function addPlay(playbook: Playbook, play: PlayEntry, after?: PlayEntry): EditedPlaybook {
  const at = after === undefined ? playbook.plays.length : playbook.plays.indexOf(after) + 1;
  const plays = [...playbook.plays.slice(0, at), play, ...playbook.plays.slice(at)];
  return editedPlaybook({ ...playbook, plays }, [], play.id);
}

function setField(playbook: Playbook, id: string, change: (play: PlayEntry) => PlayEntry): PlaybookEdit {
  const play = playbook.plays.find((each) => each.id === id);
  return play === undefined ? noPlay(id) : editedPlaybook(withPlay(playbook, play, change(play)));
}

function withPlay(playbook: Playbook, before: PlayEntry, after: PlayEntry): Playbook {
  if (before === after) return playbook;
  return { ...playbook, plays: playbook.plays.map((play) => (play === before ? after : play)) };
}

function freshPlayId(playbook: Playbook, name: string): string {
  return freshId(
    name,
    playbook.plays.map((play) => play.id),
    'play',
  );
}

function copyName(playbook: Playbook, name: string, word: string): string {
  const taken = new Set(playbook.plays.map((play) => play.name));
  for (let number = 1; ; number++) {
    const ending = number === 1 ? ` (${word})` : ` (${word} ${number})`;
    const named = name.slice(0, limits.name - ending.length) + ending;
    if (!taken.has(named)) return named;
  }
}

function nameRefusal(name: string): Refused | undefined {
  const { length } = name.trim();
  if (length === 0) return refused('A play needs a name.');
  return length > limits.name ? refused(`A name has at most ${limits.name} letters.`) : undefined;
}

function roomRefusal(playbook: Playbook): Refused | undefined {
  return playbook.plays.length >= limits.plays
    ? refused(`A playbook holds at most ${limits.plays} plays. Take one out first.`)
    : undefined;
}

function noPlay(id: string): Refused {
  return refused(`The playbook has no play "${id}" any more.`);
}
