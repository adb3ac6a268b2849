/** Of what kind readings of one thing are: where a decimal comma may stand depends on it. */
export type ReadingKind = 'seconds' | 'speed' | 'count';

/**
 * The readings of a cell, each as text with a decimal point, in their order; units stay where they stand.
 *
 * Spaces and ; | / part readings, and so does a comma with a space after it. A comma inside, as in "2,95", is read by what it can be: counts are whole,
 * so it parts two of them; beside a decimal point it parts two readings; times are never whole seconds, so one comma is theirs; in a speed
 * one digit after it is a tenth, and two are the next speed. Times with several commas, "2,95,3,1", can be read in two ways: they stay one
 * text, which is no number.
 */
export function readingParts(text: string, kind: ReadingKind): readonly string[] {
  return text
    .split(/[\s;|/]+|,\s+|,$/)
    .flatMap((part) => atCommas(part, kind))
    .filter((part) => part !== '');
}

function atCommas(part: string, kind: ReadingKind): readonly string[] {
  const pieces = part.split(',');
  if (pieces.length === 1 || part.includes('.')) return pieces;
  if (kind === 'seconds') return pieces.length === 2 ? [pieces.join('.')] : [part];
  const isTenth = kind === 'speed' && pieces.length === 2 && /\d,\d(?!\d)/.test(part);
  return isTenth ? [pieces.join('.')] : pieces;
}
