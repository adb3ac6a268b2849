import type { SheetKind } from '../../teach/index.ts';
import { badUse } from '../failure.ts';

/** The switches of the shell that say which. */
export interface RawSheetKind {
  readonly spots?: true;
  readonly cards?: true;
  readonly book?: true;
}

/** Which of them is asked for; fails when several are. */
export function readSheetKind({ spots, cards, book }: RawSheetKind): SheetKind {
  const asked = [
    ...(spots === true ? ['spots' as const] : []),
    ...(cards === true ? ['cards' as const] : []),
    ...(book === true ? ['book' as const] : []),
  ];
  const [kind, other] = asked;
  if (other !== undefined)
    throw badUse(`--${kind} and --${other} do not go together: ask for one, then for the other.`);
  return kind ?? 'sheet';
}

/** Where it is written when nobody says. */
export function defaultSheetFile(kind: SheetKind, play: string): string {
  switch (kind) {
    case 'sheet':
      return `${play}-sheet.pdf`;
    case 'spots':
      return `${play}-spots.pdf`;
    case 'cards':
      return 'call-cards.pdf';
    case 'book':
      return 'playbook.pdf';
    default:
      return exhaustive(kind);
  }
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(kind)}`);
}
