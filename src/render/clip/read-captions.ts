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

/** What a man should look for, said when the ball comes to him: "TL looks: 1, if C is open, TL feeds C; 2, if TL is pressed, TL passes to P." */
export function readCaptions(
  events: readonly TraceEvent[],
  play: ReadsOfPlay,
  spots: readonly string[],
): readonly ClipCaption[] {
  return events.flatMap((event): readonly ClipCaption[] => {
    const man = whoGetsIt(event, play, spots);
    if (man === undefined) return [];
    const his = readsOf(play, man, isInLastTen(events, event.time)).filter(({ read }) =>
      isTaughtNow(read, events, event.time),
    );
    if (his.length === 0) return [];
    const told = his.map(({ number, read }) => `${number}, ${readWords(read)}`);
    return [[Math.round(event.time * 100) / 100, `${man} looks: ${told.join('; ')}.`]];
  });
}

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

function whoGetsIt(event: TraceEvent, { start }: ReadsOfPlay, spots: readonly string[]): string | undefined {
  if (event.kind === 'setUp') return start.ball;
  return event.kind === 'catch' ? spots[event.who] : undefined;
}

function readsOf({ reads, lastTen }: ReadsOfPlay, carrier: string, inLastTen: boolean): readonly Numbered[] {
  const taught = inLastTen ? (lastTen?.reads ?? []) : reads;
  return taught.filter((read) => read.carrier === carrier).map((read, at) => ({ number: at + 1, read }));
}

/** A read may be taught for one step alone; the step that his catch begins counts too, and that is told in the same moment. */
function isTaughtNow({ during }: Read, events: readonly TraceEvent[], time: number): boolean {
  if (during === undefined) return true;
  const begun = events.flatMap((event) =>
    event.kind === 'beat' && event.time <= time + sameMoment ? [event.beat] : [],
  );
  return begun.at(-1) === during;
}

/** Two steps of a trial, s. */
const sameMoment = 0.1;
