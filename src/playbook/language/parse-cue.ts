import type { Cue } from '../../engine/index.ts';
import { PhraseReader, type PhraseReading, readPhrase } from './phrase.ts';
import { type PlayNames, readOtherSpot } from './play-names.ts';

/**
 * Reads one cue of a carrier: `free`, `pressed`, `open SPOT` or `left SPOT`.
 *
 * `parseCue('open C', 'X', names)` holds when X sees that C has room and that nobody stands in the lane.
 */
export function parseCue(text: string, carrier: string, names: PlayNames): PhraseReading<Cue> {
  const reader = new PhraseReader(text, 'cue-syntax', '"free", "pressed", "open C" or "left WR"');
  return readPhrase(reader, () => readCue(reader, carrier, names));
}

function readCue(reader: PhraseReader, carrier: string, names: PlayNames): Cue {
  if (reader.maybeWord('free')) return { kind: 'iAmFree' };
  if (reader.maybeWord('pressed')) return { kind: 'iAmPressed' };
  for (const kind of ['open', 'left'] as const) {
    if (reader.maybeWord(kind)) return { kind, who: readOtherSpot(reader, names, carrier, 'look for', 'who?') };
  }
  return reader.stop('free, pressed, open or left');
}
