import type { Point } from '../../engine/index.ts';
import { nearestName } from './nearest-name.ts';
import { spotIdPattern } from './patterns.ts';
import { type PhraseFault, PhraseReader, readPhrase } from './phrase.ts';

/** One duty of an own scheme's row, as written. */
export type WrittenDuty =
  | { readonly by: string; readonly kind: 'ball' }
  | { readonly by: string; readonly kind: 'man' | 'lane' | 'lock' | 'front'; readonly on: string }
  | { readonly by: string; readonly kind: 'split'; readonly on: string; readonly and: string }
  | { readonly by: string; readonly kind: 'pipe'; readonly side: 'left' | 'right'; readonly on?: string }
  | { readonly by: string; readonly kind: 'place'; readonly at: Point };

/** What the duties of one scheme may name. */
export interface SchemeNames {
  readonly men: ReadonlySet<string>;
  readonly spots: ReadonlySet<string>;
}

const dutyWords = ['ball', 'man', 'split', 'lane', 'lock', 'front', 'pipe', 'at'];

/**
 * Reads one duty: `tr ball`, `lr man WR`, `tl split P TL`, `ll lane WL`, `c lock C`, `c front C`, `ll pipe left WL`, `c at 0,5`.
 */
export function parseDuty(
  text: string,
  names: SchemeNames,
): { readonly value?: WrittenDuty; readonly faults: readonly PhraseFault[] } {
  const reader = new PhraseReader(text, 'duty-syntax', '"tr ball", "tl split P TL" or "ll pipe left"');
  return readPhrase(reader, () => readDuty(reader, names));
}

function readDuty(reader: PhraseReader, names: SchemeNames): WrittenDuty {
  const man = reader.anyWord('a defender');
  const by = man.text;
  if (!names.men.has(by)) {
    const near = nearestName(by, names.men);
    reader.fault(
      'defender-unknown',
      man.offset,
      `The scheme has no defender "${by}".${near === undefined ? '' : ` Did you mean ${near}?`} Its men are ${[...names.men].join(', ')}.`,
    );
  }
  const duty = reader.peek();
  if (duty?.kind !== 'word' || !dutyWords.includes(duty.text)) return reader.stop(`a duty (${dutyWords.join(', ')})`);
  reader.anyWord('a duty');
  switch (duty.text) {
    case 'ball':
      return { by, kind: 'ball' };
    case 'split':
      return { by, kind: 'split', on: readSpot(reader, names), and: readSpot(reader, names) };
    case 'pipe': {
      const side = reader.maybeWord('left')
        ? 'left'
        : reader.maybeWord('right')
          ? 'right'
          : reader.stop('left or right');
      return reader.peek() === undefined
        ? { by, kind: 'pipe', side }
        : { by, kind: 'pipe', side, on: readSpot(reader, names) };
    }
    case 'at': {
      const x = reader.number('a place (x,y in yards)').value;
      reader.symbol('comma');
      return { by, kind: 'place', at: { x, y: reader.number('the y of the place').value } };
    }
    default:
      return { by, kind: duty.text as 'man' | 'lane' | 'lock' | 'front', on: readSpot(reader, names) };
  }
}

function readSpot(reader: PhraseReader, names: SchemeNames): string {
  const found = reader.peek();
  if (found?.kind === 'word' && !spotIdPattern.test(found.text)) return reader.stop('a spot in capital letters');
  const token = reader.anyWord('a spot');
  if (!names.spots.has(token.text)) {
    reader.fault(
      'spot-unknown',
      token.offset,
      `No set has a spot "${token.text}". The spots are ${[...names.spots].join(', ')}.`,
    );
  }
  return token.text;
}
