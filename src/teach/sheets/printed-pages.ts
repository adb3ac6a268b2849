import {
  type Bookmark,
  benchCard,
  callCards,
  type OpponentContent,
  opponentPage,
  type Page,
  playSheet,
  printedBook,
  type SheetContent,
  spotPages,
} from '../../render/index.ts';

/** What can be printed: a play on one page, the same with a page for each man, cards for the calls, the whole playbook, one opponent. */
export type SheetKind = PlaySheetKind | 'opponent';
/** Those of them that are made of plays alone. */
export type PlaySheetKind = 'sheet' | 'spots' | 'cards' | 'book';

/** Whether it is of one play, which must then be named. */
export function isOfOnePlay(kind: SheetKind): boolean {
  return kind === 'sheet' || kind === 'spots';
}

/** The pages, with the outline of a document that has one of its own. */
export interface PrintedPages {
  readonly title: string;
  readonly pages: readonly Page[];
  readonly outline?: readonly Bookmark[];
}

/** Lays out what is asked for, of one play or more. */
export function printedPages(kind: PlaySheetKind, plays: readonly SheetContent[]): PrintedPages {
  const { play, team } = plays[0]!;
  const calls = plays.map((content, at) => ({ number: at + 1, content }));
  switch (kind) {
    case 'sheet':
      return { title: `${play.name}: play sheet`, pages: plays.map((content) => playSheet(content)) };
    case 'spots':
      return {
        title: `${play.name}: play sheet and a page for each man`,
        pages: plays.flatMap((content) => [playSheet(content), ...spotPages(content)]),
      };
    case 'cards':
      return { title: `${team}: call cards`, pages: [...benchCard(calls), ...callCards(calls)] };
    case 'book':
      return { title: `${team}: man-up playbook`, ...printedBook(plays) };
    default:
      return exhaustive(kind);
  }
}

/** The page of one opponent. */
export function printedOpponent(content: OpponentContent): PrintedPages {
  const page = opponentPage(content);
  return { title: page.title, pages: [page] };
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(kind)}`);
}
