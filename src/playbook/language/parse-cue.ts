import type { Cue } from '../../engine/index.ts';
import { cuePhrases } from './cue-phrases.ts';
import { PhraseReader, type PhraseReading, readPhrase } from './phrase.ts';
import { type PlayNames, readOtherSpot } from './play-names.ts';

/**
 * Reads one cue of a carrier: `free`, `pressed`, `next steps`, `my man leaves`, `crease up`, `far low looks away`, `far low crosses`, or of a
 * mate `open SPOT`, `left SPOT`, `lane taken SPOT`.
 *
 * `parseCue('open C', 'X', names)` holds when X sees that C has room and that nobody stands in the lane.
 */
export function parseCue(text: string, carrier: string, names: PlayNames): PhraseReading<Cue> {
  const reader = new PhraseReader(text, 'cue-syntax', '"free", "crease up", "open C" or "lane taken WR"');
  return readPhrase(reader, () => readCue(reader, carrier, names));
}

function readCue(reader: PhraseReader, carrier: string, names: PlayNames): Cue {
  const kind = readKind(reader);
  switch (kind) {
    case 'open':
    case 'left':
    case 'laneTaken':
      return { kind, who: readOtherSpot(reader, names, carrier, 'look for', 'who?') };
    default:
      return { kind };
  }
}

interface CueWords {
  readonly kind: Cue['kind'];
  readonly words: readonly string[];
}

const allCueWords = Object.entries(cuePhrases).map(
  ([kind, phrase]): CueWords => ({ kind: kind as Cue['kind'], words: phrase.split(' ') }),
);

/** Word by word, so that a slip in the middle is told where it is. */
function readKind(reader: PhraseReader): Cue['kind'] {
  let possible: readonly CueWords[] = allCueWords;
  for (let at = 0; ; at++) {
    const whole = possible.find(({ words }) => words.length === at);
    if (whole !== undefined) return whole.kind;
    const word = possible.map(({ words }) => words[at]!).find((each) => reader.maybeWord(each));
    if (word === undefined) return reader.stop(anyOf(possible.map(({ words }) => words.slice(at).join(' '))));
    possible = possible.filter(({ words }) => words[at] === word);
  }
}

function anyOf(phrases: readonly string[]): string {
  return [phrases.slice(0, -1).join(', '), phrases.at(-1)!].filter((part) => part !== '').join(' or ');
}
