import type { Action, Point, RunKind, SpotId } from '../../engine/index.ts';
import { longestHold, runWords } from '../language/parse-action.ts';
import { limits } from '../limits.ts';
import { type Slot, slotOf } from '../play/check-beats.ts';
import type { BeatEntry, PlayEntry } from '../schema.ts';
import { type ActionAddress, editedPlay, type PlayEdit, type Refused, refused } from './edit-result.ts';
import { mapAction, spotsIn } from './map-action.ts';
import { placeRefusal, roundPlace } from './place-rules.ts';
import type { PlayGround } from './play-ground.ts';
import { beatsOf, type FoundBeat, findBeat, withBeat } from './play-script.ts';
import { type PlayWords, placesIn, wordsOf } from './play-words.ts';

/** The words of the play language for what a man can be told. */
export type ActionVerb =
  | 'pass'
  | 'skip'
  | 'feed'
  | 'carry'
  | 'step'
  | 'fake'
  | 'hold'
  | 'shoot'
  | keyof typeof runWords
  | 'pick'
  | 'seal';

/** Add an action to a beat. Refused when its man is told something of the kind there already. */
export function addAction(play: PlayEntry, ground: PlayGround, beat: string, action: Action): PlayEdit {
  const found = findBeat(play, beat);
  if (found === undefined) return noBeat(beat);
  const words = wordsHere(play, ground, found);
  const rival = rivalOf(found.beat, words, action);
  if (rival !== undefined)
    return refused(
      `In the step "${beat}" ${action.by} is told already: ${found.beat.do[rival]}. Change that, or give this a step of its own.`,
    );
  if (found.beat.do.length >= limits.actions) return refused(`A step holds at most ${limits.actions} actions.`);
  return write(play, ground, found, words, found.beat.do.length, action);
}

/** Add an action, or put it in the place of what its man is told of the kind in the beat: what a drag on the field means. */
export function putAction(play: PlayEntry, ground: PlayGround, beat: string, action: Action): PlayEdit {
  const found = findBeat(play, beat);
  if (found === undefined) return noBeat(beat);
  const words = wordsHere(play, ground, found);
  const rival = rivalOf(found.beat, words, action);
  if (rival === undefined) return addAction(play, ground, beat, action);
  return write(play, ground, found, words, rival, action);
}

/** Put another action in the place of one. */
export function changeAction(play: PlayEntry, ground: PlayGround, at: ActionAddress, action: Action): PlayEdit {
  const found = findBeat(play, at.beat);
  if (found === undefined) return noBeat(at.beat);
  if (found.beat.do[at.action] === undefined) return noAction(at);
  const words = wordsHere(play, ground, found);
  const rival = rivalOf(found.beat, words, action, at.action);
  if (rival !== undefined)
    return refused(`In the step "${at.beat}" ${action.by} is told already: ${found.beat.do[rival]}.`);
  return write(play, ground, found, words, at.action, action);
}

/** Change an action by a function of what it says now. Refused when it cannot be read. */
export function editAction(
  play: PlayEntry,
  ground: PlayGround,
  at: ActionAddress,
  change: (action: Action, words: PlayWords) => Action | Refused,
): PlayEdit {
  const found = findBeat(play, at.beat);
  if (found === undefined) return noBeat(at.beat);
  const text = found.beat.do[at.action];
  if (text === undefined) return noAction(at);
  const words = wordsHere(play, ground, found);
  const action = words.action(text);
  if (action === undefined) return refused(`"${text}" cannot be read. Write it anew.`);
  const changed = change(action, words);
  if (changed.kind === 'refused') return changed;
  return changeAction(play, ground, at, changed);
}

/** Take an action out of its beat. */
export function removeAction(play: PlayEntry, at: ActionAddress): PlayEdit {
  const found = findBeat(play, at.beat);
  if (found === undefined) return noBeat(at.beat);
  if (found.beat.do[at.action] === undefined) return noAction(at);
  return editedPlay(withBeat(play, found, { ...found.beat, do: found.beat.do.filter((_, i) => i !== at.action) }));
}

/** Let a run wait until its place is open, or go at once. */
export function setWhenOpen(play: PlayEntry, ground: PlayGround, at: ActionAddress, waits: boolean): PlayEdit {
  return editAction(play, ground, at, (action) =>
    action.kind === 'run'
      ? { ...action, go: waits ? 'whenOpen' : 'now' }
      : refused('Only a run without the ball can wait until its place is open.'),
  );
}

/** Change whom a pass, a fake, a pick or a seal is for. */
export function changeTarget(play: PlayEntry, ground: PlayGround, at: ActionAddress, target: SpotId): PlayEdit {
  return editAction(play, ground, at, (action) => {
    switch (action.kind) {
      case 'pass':
        return { ...action, to: target };
      case 'fake':
        return { ...action, toward: target };
      case 'pick':
      case 'seal':
        return { ...action, on: target };
      default:
        return refused('This is done for nobody in particular.');
    }
  });
}

/** Change what a man does and keep what of it still has a meaning: whom it is for, where it leads. */
export function changeVerb(play: PlayEntry, ground: PlayGround, at: ActionAddress, verb: ActionVerb): PlayEdit {
  return editAction(play, ground, at, (action, words) => recast(action, verb, words));
}

function recast(action: Action, verb: ActionVerb, words: PlayWords): Action | Refused {
  const { by } = action;
  const target = spotsIn(action)[1];
  const path = placesIn(action);
  const end = path.at(-1);
  const needsTarget = () => refused(`Say whom: "${verb}" is for another man.`);
  const needsPlace = () => refused(`Say where to: "${verb}" leads to a place.`);
  switch (verb) {
    case 'pass':
    case 'skip':
    case 'feed':
      return target === undefined
        ? needsTarget()
        : { kind: 'pass', by, to: target, style: verb === 'pass' ? 'adjacent' : verb };
    case 'fake':
      return target === undefined ? needsTarget() : { kind: 'fake', by, toward: target };
    case 'seal':
      return target === undefined ? needsTarget() : { kind: 'seal', by, on: target };
    case 'pick':
      return target === undefined || end === undefined
        ? refused('Say where he stands and for whom: "pick" needs both.')
        : { kind: 'pick', by, at: end, on: target };
    case 'step':
      return end === undefined ? needsPlace() : { kind: 'stepIn', by, to: end };
    case 'carry':
      return end === undefined ? needsPlace() : { kind: 'carry', by, path };
    case 'hold':
      return { kind: 'hold', by, seconds: usualHold };
    case 'shoot':
      return { kind: 'shot', by };
    default: {
      const run: RunKind = runWords[verb];
      const home = run === 'replace' && target !== undefined ? words.homes.get(target) : undefined;
      const way: readonly Point[] = end === undefined && home !== undefined ? [home] : path;
      return way.length === 0
        ? needsPlace()
        : { kind: 'run', run, by, path: way, go: action.kind === 'run' ? action.go : 'now' };
    }
  }
}

/** How long a man holds the ball who is told to and not how long, s: a look at the defense (ours, no source). */
const usualHold = 1;

/** The place in the beat of what this man is told there of the same kind, another than at `except`. */
function rivalOf(beat: BeatEntry, words: PlayWords, action: Action, except?: number): number | undefined {
  const slot: Slot = slotOf(action);
  const rival = beat.do.findIndex((text, i) => {
    const other = i === except ? undefined : words.action(text);
    return other !== undefined && other.by === action.by && slotOf(other) === slot;
  });
  return rival < 0 ? undefined : rival;
}

function write(
  play: PlayEntry,
  ground: PlayGround,
  found: FoundBeat,
  words: PlayWords,
  index: number,
  action: Action,
): PlayEdit {
  const rounded = byName(roundedAction(action, words, ground), words);
  const refusal = actionRefusal(rounded, words, ground);
  if (refusal !== undefined) return refusal;
  const text = words.writeAction(rounded);
  if (text.length > limits.phrase) return refused('That way has too many bends to be written down. Take some out.');
  const at = { beat: found.beat.id, action: index };
  if (text === found.beat.do[index]) return editedPlay(play, [], at);
  const phrases = [...found.beat.do];
  phrases[index] = text;
  return editedPlay(withBeat(play, found, { ...found.beat, do: phrases }), [], at);
}

/** The action with its places as they are written; those that go by a spot's name stay its home. */
function roundedAction(action: Action, words: PlayWords, ground: PlayGround): Action {
  const homes = new Set(words.homes.values());
  return mapAction(action, {
    spot: (id) => id,
    place: (point) => (homes.has(point) ? point : roundPlace(point, ground.field)),
  });
}

/** Who fills a place that was left fills it by its name, so that he follows when the place is moved. */
function byName(action: Action, { homes }: PlayWords): Action {
  if (action.kind !== 'run' || action.run !== 'replace') return action;
  const end = action.path.at(-1);
  const home = [...homes.values()].find((at) => at.x === end?.x && at.y === end.y);
  return home === undefined ? action : { ...action, path: [...action.path.slice(0, -1), home] };
}

function actionRefusal(action: Action, words: PlayWords, ground: PlayGround): Refused | undefined {
  const [by, other] = spotsIn(action);
  const stranger = [by, other].find((id) => id !== undefined && !words.homes.has(id));
  if (stranger !== undefined) return refused(`The play has no spot ${stranger}.`);
  if (by === other) return refused(`${by} cannot do that for himself. Name another man.`);
  if (action.kind === 'hold' && !(action.seconds > 0 && action.seconds <= longestHold))
    return refused(`The ball is held for more than 0 and at most ${longestHold} seconds.`);
  for (const place of placesIn(action)) {
    const refusal = placeRefusal(place, ground.field);
    if (refusal !== undefined) return refusal;
  }
  if ((action.kind === 'run' || action.kind === 'carry') && action.path.length === 0)
    return refused('Say where to: a way has an end.');
  return undefined;
}

function wordsHere(play: PlayEntry, ground: PlayGround, { script }: FoundBeat): PlayWords {
  return wordsOf(play, ground, beatsOf(play, script));
}

export function noBeat(id: string): Refused {
  return refused(`The play has no step "${id}" any more.`);
}

function noAction({ beat }: ActionAddress): Refused {
  return refused(`The step "${beat}" has no such action any more.`);
}
