import type { LookWindow, Play, ScriptTrace, TraceEvent } from '../../engine/index.ts';
import { actionWords } from '../play-words.ts';
import { attackerName, type TraceNames } from '../trace-names.ts';
import { eventWords, isMainEvent } from '../words.ts';
import type { ClipCaption } from './clip.ts';
import { isInLastTen, type ReadsOfPlay, readCaptions, readOfLook } from './read-captions.ts';

/**
 * What is said under a play while it runs: every main event, what a man looks for when the ball comes to him, and every opening when it opens, with the
 * read that asks for it, in order of time. Times are to a hundredth of a
 * second, so that stepping to a caption shows its moment.
 */
export function clipCaptions(
  script: Pick<ScriptTrace, 'trial' | 'trace' | 'began' | 'windows'>,
  play: ReadsOfPlay,
  names: TraceNames,
): readonly ClipCaption[] {
  const { trace, began, windows, trial } = script;
  const told = trace.events
    .filter((event) => isTold(event, began))
    .map(
      (event): ClipCaption => [hundredth(event.time), `${toldWords(event, play) ?? eventWords(event, trace, names)}.`],
    );
  const opened = openingsTogether(windows.filter((window) => window.trial === trial)).map((together): ClipCaption => {
    const time = hundredth(began + together[0]!.opens);
    const asked = readNumber(together, play, names, isInLastTen(trace.events, time));
    return [time, `${openingWords(together, names)}${asked}`];
  });
  const looks = readCaptions(
    trace.events.filter((event) => event.time >= began),
    play,
    names.offense,
  );
  // A stable sort: what happens at one moment stays in the order in which it was decided.
  return withoutRepeats([...told, ...looks, ...opened].sort(([one], [other]) => one - other)).map(([time, text]) => [
    time,
    unbroken(text),
  ]);
}

/** Openings of one moment for one man with the ball, each list at least one long; those to shoot by themselves. */
function openingsTogether(windows: readonly LookWindow[]): readonly (readonly LookWindow[])[] {
  const lists = new Map<string, LookWindow[]>();
  for (const window of windows) {
    const key = `${hundredth(window.opens)} ${window.from} ${window.kind === 'shot'}`;
    lists.set(key, [...(lists.get(key) ?? []), window]);
  }
  return [...lists.values()];
}

/** " That is X's read 2.": empty where no read asks for any of these looks. */
function readNumber(together: readonly LookWindow[], play: ReadsOfPlay, names: TraceNames, lastTen: boolean): string {
  const numbers = together.flatMap((window) => readOfLook(window, play, names.offense, lastTen) ?? []);
  const [first] = together;
  if (numbers.length === 0 || first === undefined) return '';
  return ` That is ${attackerName(names, first.from)}'s read ${Math.min(...numbers)}.`;
}

/** "C is open to a feed from X." Of several: "X has C open to a feed and WL to a pass." A shot is the carrier's own: "X is free to shoot." */
function openingWords(together: readonly LookWindow[], names: TraceNames): string {
  const [first, ...others] = together;
  if (first === undefined) throw new RangeError('an opening needs a man who is open');
  const carrier = attackerName(names, first.from);
  if (first.kind === 'shot') return `${carrier} is free to shoot.`;
  const mate = ({ to }: LookWindow): string => attackerName(names, to);
  if (others.length === 0) return `${mate(first)} is open to a ${first.kind} from ${carrier}.`;
  const more = others.map((one) => `${mate(one)} to a ${one.kind}`);
  const list = [`${mate(first)} open to a ${first.kind}`, ...more];
  return `${carrier} has ${list.slice(0, -1).join(', ')} and ${list.at(-1)}.`;
}

// A player reads what he is to do, and not where on the field it ends in numbers, as the file has it: that he sees.
function toldWords(event: TraceEvent, { beats, lastTen }: Pick<Play, 'beats' | 'lastTen'>): string | undefined {
  if (event.kind !== 'beat') return undefined;
  const beat = (event.lastTen ? (lastTen?.beats ?? []) : beats).find(({ id }) => id === event.beat);
  return beat && `Step "${beat.id}" begins: ${beat.actions.map(actionWords).join('; ')}`;
}

// A goal or a lost ball is told by its own event; that the chance then ends says nothing more.
// A try that was given up before the one that is shown is no part of it.
function isTold(event: TraceEvent, began: number): boolean {
  return isMainEvent(event) && event.kind !== 'end' && !(event.kind === 'reset' && event.time < began);
}

/** A look that shuts and opens again within this time is one look to the eye, s. */
const sameLook = 1.5;

function withoutRepeats(captions: readonly ClipCaption[]): readonly ClipCaption[] {
  return captions.filter(
    ([time, text], index) => !captions.slice(0, index).some((one) => one[1] === text && time - one[0] < sameLook),
  );
}

// A number stays on the line of its unit: on a phone most sentences are broken.
function unbroken(text: string): string {
  return text.replace(/(\d) (?=(%|yd|s)(?!\w))/g, '$1\u00a0');
}

function hundredth(time: number): number {
  return Math.round(time * 100) / 100;
}
