import type { OwnDuty } from '../../engine/index.ts';
import { nearestName } from './nearest-name.ts';
import { creaseWord, defenderPattern, spotIdPattern } from './patterns.ts';
import { PhraseReader, type PhraseReading, readPhrase } from './phrase.ts';

/** What the duties of one scheme may name. */
export interface SchemeNames {
  readonly men: ReadonlySet<string>;
  readonly spots: ReadonlySet<string>;
}

/** A duty and the defender who has it. */
export interface WrittenDuty {
  readonly by: string;
  readonly own: OwnDuty;
}

const dutyWords = ['ball', 'man', 'split', 'lane', 'lock', 'front', 'pipe', 'at'];

/**
 * Reads one duty: `tr ball`, `lr man WR`, `tl split P TL`, `ll lane WL`, `c lock C`, `c front crease`, `ll pipe WL at -3,3`, `c at 0,5`.
 */
export function parseDuty(text: string, names: SchemeNames): PhraseReading<WrittenDuty> {
  const reader = new PhraseReader(text, 'duty-syntax', '"tr ball", "tl split P TL" or "c front crease"');
  return readPhrase(reader, () => {
    const by = readMan(reader, names);
    return { by, own: readDuty(reader, names) };
  });
}

function readMan(reader: PhraseReader, names: SchemeNames): string {
  const found = reader.peek();
  if (found?.kind === 'word' && !defenderPattern.test(found.text)) return reader.stop('a defender in small letters');
  const man = reader.anyWord('a defender');
  if (!names.men.has(man.text)) {
    const near = nearestName(man.text, names.men);
    const guess = near === undefined ? '' : ` Did you mean ${near}?`;
    reader.fault(
      'defender-unknown',
      man.offset,
      `The scheme has no defender "${man.text}".${guess} Its men are ${[...names.men].join(', ')}.`,
    );
  }
  return man.text;
}

function readDuty(reader: PhraseReader, names: SchemeNames): OwnDuty {
  const word = reader.peek();
  if (word?.kind !== 'word' || !dutyWords.includes(word.text)) return reader.stop(`a duty (${dutyWords.join(', ')})`);
  reader.anyWord('a duty');
  switch (word.text) {
    case 'ball':
      return { duty: 'ball' };
    case 'split':
      return { duty: 'split', who: [readMark(reader, names), readMark(reader, names)] };
    case 'at':
      return { duty: 'place', at: readYards(reader) };
    case 'lane':
    case 'pipe': {
      const who = readMark(reader, names);
      return reader.maybeWord('at') ? { duty: word.text, who, at: readYards(reader) } : { duty: word.text, who };
    }
    default:
      return { duty: word.text as 'man' | 'lock' | 'front', who: readMark(reader, names) };
  }
}

/** A spot, or the word for whoever is on the crease. */
function readMark(reader: PhraseReader, names: SchemeNames): string {
  if (reader.maybeWord(creaseWord)) return creaseWord;
  const found = reader.peek();
  if (found?.kind === 'word' && !spotIdPattern.test(found.text))
    return reader.stop('a spot in capital letters, or "crease",');
  const token = reader.anyWord('a spot, or "crease",');
  if (!names.spots.has(token.text)) {
    reader.fault(
      'spot-unknown',
      token.offset,
      `No set has a spot "${token.text}". The spots are ${[...names.spots].join(', ')}, and "crease" for whoever is there.`,
    );
  }
  return token.text;
}

function readYards(reader: PhraseReader): readonly [number, number] {
  const x = reader.number('a place (x,y in yards)').value;
  reader.symbol('comma');
  return [x, reader.number('the y of the place, in yards').value];
}
