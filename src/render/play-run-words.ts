import type { Beat, Play, Trace } from '../engine/index.ts';

/**
 * How much of the play one chance came to: "Of the play: 2 of 3 steps begun, not "rip"." What replaces it in the last ten seconds
 * gets a sentence of its own, once any of it has begun.
 */
export function playRunWords(trace: Trace, { beats, lastTen }: Play): string {
  const begun = begunBeats(trace, false);
  const late = begunBeats(trace, true);
  const main = begun.size === 0 ? 'The play never began.' : `Of the play: ${partWords(beats, begun)}.`;
  return lastTen === undefined || late.size === 0
    ? main
    : `${main} Of the last ten seconds: ${partWords(lastTen.beats, late)}.`;
}

function begunBeats({ events }: Trace, lastTen: boolean): ReadonlySet<string> {
  return new Set(events.flatMap((event) => (event.kind === 'beat' && event.lastTen === lastTen ? [event.beat] : [])));
}

function partWords(beats: readonly Beat[], begun: ReadonlySet<string>): string {
  const missed = beats.filter(({ id }) => !begun.has(id)).map(({ id }) => `"${id}"`);
  const part = `${begun.size} of ${beats.length} ${beats.length === 1 ? 'step' : 'steps'} begun`;
  return missed.length === 0 ? part : `${part}, not ${missed.join(', ')}`;
}
