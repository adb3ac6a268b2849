import type { Action, Order, Point, RunKind, SpotId } from '../../engine/index.ts';
import {
  groundOf,
  type Playbook,
  type PlayEntry,
  type PlayWords,
  placesIn,
  type ReadEntry,
  wordsOf,
} from '../../playbook/index.ts';
import { actionWords, readWords, triggerWords } from '../../render/index.ts';
import { placeText } from './place-text.ts';

/** The phrases of a play as clauses: "C cuts to −2, 6". A phrase that cannot be read stands as it was typed. */
export interface PhraseSentences {
  readonly trigger: (text: string) => string;
  readonly action: (text: string) => string;
  readonly read: (entry: ReadEntry) => string;
}

/** The phrases of one script of a play, which is that of these beats. */
export function phraseSentences(playbook: Playbook, play: PlayEntry, beats: PlayEntry['beats']): PhraseSentences {
  const words = wordsOf(play, groundOf(playbook), beats);
  const name_byHome = new Map<Point, SpotId>([...words.homes].map(([id, at]) => [at, id]));
  return {
    trigger: (text) => whenRead(words.trigger(text), triggerWords) ?? text,
    action: (text) => whenRead(words.action(text), (action) => actionSentence(action, name_byHome)) ?? text,
    read: (entry) => readSentence(entry, words, name_byHome),
  };
}

function readSentence(entry: ReadEntry, words: PlayWords, name_byHome: ReadonlyMap<Point, SpotId>): string {
  const during = entry.during === undefined ? '' : `in “${entry.during}”, `;
  const read = words.read(entry);
  if (read === undefined) return `${during}${entry.carrier}: ${[...entry.if, entry.then].join(', ')}`;
  return `${during}${readWords(read)}${wayWords(read.then, name_byHome)}`;
}

function actionSentence(action: Action, name_byHome: ReadonlyMap<Point, SpotId>): string {
  if (action.kind !== 'run' || action.go === 'now') return `${actionWords(action)}${wayWords(action, name_byHome)}`;
  const [now, waiting] = [actionWords({ ...action, go: 'now' }), actionWords(action)];
  // What the words add for a man who waits comes after his way.
  return `${now}${wayWords(action, name_byHome)}${waiting.slice(now.length)}`;
}

/** By which places to which, as the words of an action do not say: " by 0, 8.5 to −3.5, 5". */
function wayWords(action: Order, name_byHome: ReadonlyMap<Point, SpotId>): string {
  const places = placesIn(action).map((at) => name_byHome.get(at) ?? placeText(at.x, at.y));
  const last = places.pop();
  if (last === undefined) return '';
  if (action.kind === 'stepIn') return `, at ${last}`;
  const ends = action.kind === 'pick' || (action.kind === 'run' && endsAt.has(action.run)) ? 'at' : 'to';
  return `${places.map((place) => ` by ${place}`).join('')} ${ends} ${last}`;
}

// He "fills the empty place at", not "to".
const endsAt: ReadonlySet<RunKind> = new Set(['replace', 'backUp']);

function whenRead<T>(value: T | undefined, say: (value: T) => string): string | undefined {
  return value === undefined ? undefined : say(value);
}
