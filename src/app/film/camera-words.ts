import { type CameraDoubt, type CameraFit, leastMarks, type SeenPlace } from '../../engine/index.ts';
import { tenth } from '../../render/index.ts';
import type { KnownField } from './known-places.ts';

/** How well a frame is known, in a sentence, and what to doubt of it. */
export function cameraSentence(fit: CameraFit, marks: number): string {
  if (marks < leastMarks) {
    const missing = leastMarks - marks;
    return `${missing === leastMarks ? 'Four places or lines are needed' : `${missing} more ${missing === 1 ? 'place or line is' : 'places or lines are'} needed`}, so that the film can be read.`;
  }
  if (fit.kind === 'none') return `The film cannot be read by these marks: ${fit.reason}.`;
  return fit.isChecked
    ? `The marks agree within ${yardsWords(fit.error)}. See whether the drawn lines lie on the painted ones.`
    : 'The film can be read. See whether the drawn lines lie on the painted ones.';
}

/** What there is to doubt, in a sentence. */
export function doubtSentence(doubt: CameraDoubt, field: KnownField): string {
  switch (doubt.kind) {
    case 'poor': {
      const words = doubt.wrong === undefined ? undefined : nameOfMark(doubt.wrong, field);
      const which =
        words === undefined ? 'One of them is on a wrong place: look at each.' : `Most likely wrong: ${words}.`;
      return `The marks contradict each other by up to ${yardsWords(doubt.yards)}. ${which}`;
    }
    case 'onLine':
      return 'All marks but one lie nearly on one line, so places away from it are hardly known. Set one more, off that line.';
    case 'unchecked':
      return 'Nothing checks four marks: a wrong one would not show. A fifth tells.';
    default:
      return exhaustive(doubt);
  }
}

/** What a pixel may be worth at most before a man marked there is told to be coarse, yards. */
const coarse = 0.5;
/** How far outside of the marked places is told, yards. */
const farOutside = 8;

/** What to doubt of a man who is marked at a pixel; undefined for nothing. */
export function placeDoubt({ yardsAPixel, outside }: SeenPlace): string | undefined {
  if (yardsAPixel > coarse)
    return `He is far from the camera: one pixel is worth ${yardsWords(yardsAPixel)} there, so his place is coarse.`;
  if (outside > farOutside)
    return `He stands ${yardsWords(outside)} outside of the places that are marked: his place is less sure than those within.`;
  return undefined;
}

/** What a mark of the camera is called. */
export function nameOfMark(id: string, { places, lines }: KnownField): string | undefined {
  const found = [...places, ...lines].find((one) => one.id === id);
  return found === undefined ? undefined : `${found.words.charAt(0).toLowerCase()}${found.words.slice(1)}`;
}

function yardsWords(yards: number): string {
  return yards < 0.05 ? 'a tenth of a yard' : `${tenth(yards)} yd`;
}

function exhaustive(doubt: never): never {
  throw new TypeError(`unknown doubt: ${JSON.stringify(doubt)}`);
}
