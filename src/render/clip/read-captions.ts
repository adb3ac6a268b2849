import type { LookWindow, Play, Read, TraceEvent } from '../../engine/index.ts';
import { readWords } from '../play-words.ts';
import type { ClipCaption } from './clip.ts';

/** What of a play its reads are told by. */
export type ReadsOfPlay = Pick<Play, 'reads' | 'start' | 'beats' | 'lastTen'>;

/** One man's reads with their numbers on his card, from 1. */
interface Numbered {
  readonly number: number;
  readonly read: Read;
}

/**
 * What a man should look for, said when the ball comes to him, and in a step that teaches him more while he has it: "TL looks: 1, if C is open, TL
 * feeds C; 2, if TL is pressed, TL passes to P."
 */
export function readCaptions(
  events: readonly TraceEvent[],
  play: ReadsOfPlay,
  spots: readonly string[],
): readonly ClipCaption[] {
  let told: readonly Read[] = [];
  return momentsOf(events, play, spots).flatMap(({ time, man, beat, isNew, lastTen }): readonly ClipCaption[] => {
    const before = isNew ? [] : told;
    const now = readsOf(play, man, lastTen).filter(({ read }) => read.during === undefined || read.during === beat);
    const fresh = now.filter(({ read }) => !before.includes(read));
    told = [...before, ...fresh.map(({ read }) => read)];
    if (fresh.length === 0) return [];
    const words = fresh.map(({ number, read }) => `${number}, ${readWords(read)}`);
    return [[Math.round(time * 100) / 100, `${man} looks: ${words.join('; ')}.`]];
  });
}

/** A moment from which a man with the ball may have something else to look for. */
interface LookingMoment {
  readonly time: number;
  readonly man: string;
  /** The newest step. */
  readonly beat: string | undefined;
  /** Whether the ball has just come to him. */
  readonly isNew: boolean;
  readonly lastTen: boolean;
}

function momentsOf(
  events: readonly TraceEvent[],
  { start }: ReadsOfPlay,
  spots: readonly string[],
): readonly LookingMoment[] {
  const moments: LookingMoment[] = [];
  let [man, beat]: readonly (string | undefined)[] = [];
  for (const event of events) {
    const { time } = event;
    const isNew = event.kind === 'setUp' || event.kind === 'catch';
    if (event.kind === 'setUp') man = start.ball;
    else if (event.kind === 'catch') man = spots[event.who];
    else if (event.kind === 'beat') beat = event.beat;
    else if (leavesHim.has(event.kind)) man = undefined;
    if (man === undefined || !(isNew || event.kind === 'beat')) continue;
    const moment = { time, man, beat, isNew, lastTen: isInLastTen(events, time) };
    const last = moments.at(-1);
    // A step that his catch begins is told with the catch.
    if (last !== undefined && !isNew && time - last.time < sameMoment)
      moments[moments.length - 1] = { ...moment, isNew: last.isNew };
    else moments.push(moment);
  }
  return moments;
}

/** After these nobody of the offense has the ball until he catches it. */
const leavesHim: ReadonlySet<TraceEvent['kind']> = new Set(['pass', 'shot', 'stripped', 'turnover', 'end']);

/** The number of the read that asks for just this look; undefined when none does. */
export function readOfLook(
  { from, to, kind }: Pick<LookWindow, 'from' | 'to' | 'kind'>,
  play: ReadsOfPlay,
  spots: readonly string[],
  lastTen: boolean,
): number | undefined {
  const carrier = spots[from];
  if (carrier === undefined) return undefined;
  return readsOf(play, carrier, lastTen).find(({ read: { then } }) =>
    kind === 'shot' ? then.kind === 'shot' : then.kind === 'pass' && then.to === spots[to],
  )?.number;
}

/** Whether the play's script for the last ten seconds runs at this time. */
export function isInLastTen(events: readonly TraceEvent[], time: number): boolean {
  return events.some((event) => event.kind === 'beat' && event.lastTen && event.time <= time);
}

function readsOf({ reads, lastTen }: ReadsOfPlay, carrier: string, inLastTen: boolean): readonly Numbered[] {
  const taught = inLastTen ? (lastTen?.reads ?? []) : reads;
  return taught.filter((read) => read.carrier === carrier).map((read, at) => ({ number: at + 1, read }));
}

/** Two steps of a trial, s. */
const sameMoment = 0.1;
