import { type Primitive, rectangle, type Scene, text, type View } from './scene.ts';

/** Letters that fit across one yard of page in each style, for the widest of the usual sans-serif faces. */
const lettersPerYard = { heading: 1.42, sentence: 1.9, small: 2.55 } as const;
/** From one line of text to the next, yd of page. */
const lineHeight = { heading: 1.7, sentence: 1.4, small: 1.15 } as const;
/** White round the page's edge, yd of page. */
const margin = 0.8;

type TextStyle = keyof typeof lettersPerYard;

export interface PageText {
  readonly style: TextStyle;
  readonly text: string;
  /** Lines kept free for it even when it needs fewer, so that the field does not jump from picture to picture. */
  readonly lines?: number;
}

/** The field with words above and below it: grows the view so that everything fits, and wraps long lines. */
export function layOutPage(
  page: {
    readonly title: string;
    readonly description: string;
    readonly field: View;
    /** The instant shown, at the right of the heading; empty for a drawing without one. */
    readonly clock: string;
    readonly above: readonly PageText[];
    readonly below: readonly PageText[];
  },
  fieldItems: readonly Primitive[],
): Scene {
  const { field } = page;
  const above = wrapAll(page.above, field.width, page.clock);
  const below = wrapAll(page.below, field.width, '');
  const top = field.top - heightOf(above) - (above.length > 0 ? margin * 1.4 : 0);
  const fieldBottom = field.top + field.height;
  const bottom = fieldBottom + heightOf(below) + (below.length > 0 ? margin * 1.4 : 0);
  const view = { left: field.left, top, width: field.width, height: bottom - top };
  const blank = (from: number, to: number): readonly Primitive[] =>
    to > from ? [rectangle('note', field.left, from, field.left + field.width, to)] : [];
  return {
    title: page.title,
    description: page.description,
    view,
    items: [
      ...fieldItems,
      // Drawn over the field, because lines may run on past its edge.
      ...blank(top, field.top),
      ...blank(fieldBottom, bottom),
      ...lines(above, field.left + margin, top + margin * 0.8),
      ...clockText(page.clock, field.left + field.width - margin, top + margin * 0.8),
      ...lines(below, field.left + margin, fieldBottom + margin * 0.7),
    ],
  };
}

/** Breaks a text at plain spaces (a no-break space holds) into lines of at most `letters`; a longer word stands alone and is not broken. */
export function wrapText(content: string, letters: number): readonly string[] {
  const out: string[] = [];
  let current = '';
  for (const word of content.split(/[ \n]+/).filter((piece) => piece.length > 0)) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (longer.length > letters && current !== '') {
      out.push(current);
      current = word;
    } else {
      current = longer;
    }
  }
  return current === '' ? out : [...out, current];
}

interface Line {
  readonly style: TextStyle;
  readonly text: string;
}

function wrapAll(texts: readonly PageText[], width: number, clock: string): readonly Line[] {
  return texts.flatMap(({ style, text: content, lines: least = 1 }) => {
    // The clock stands at the right end of the heading's line.
    const letters = (width - 2 * margin) * lettersPerYard[style] - (style === 'heading' ? clock.length + 1 : 0);
    const pieces = balancedLines(content, Math.max(1, Math.floor(letters)));
    const empty = Array.from({ length: Math.max(0, least - pieces.length) }, () => '');
    return [...pieces, ...empty].map((piece) => ({ style, text: piece }));
  });
}

// As many lines as are needed, none much longer than the others: no word is left alone on the last one.
function balancedLines(content: string, letters: number): readonly string[] {
  const widest = wrapText(content, letters);
  let narrow = letters;
  while (narrow > 1 && wrapText(content, narrow - 1).length === widest.length) narrow -= 1;
  return wrapText(content, narrow);
}

function clockText(clock: string, right: number, top: number): readonly Primitive[] {
  return clock === '' ? [] : [text('clock', { x: right, y: top + lineHeight.heading / 2 }, clock, 'end')];
}

function heightOf(texts: readonly Line[]): number {
  return texts.reduce((sum, { style }) => sum + lineHeight[style], 0);
}

function lines(texts: readonly Line[], left: number, top: number): readonly Primitive[] {
  let y = top;
  return texts.flatMap(({ style, text: content }) => {
    y += lineHeight[style];
    return content === '' ? [] : [text(style, { x: left, y: y - lineHeight[style] / 2 }, content, 'start')];
  });
}
