import type { SheetKind } from '../../teach/index.ts';
import { badUse } from '../failure.ts';

/** The switches of the shell that say which. */
export interface RawSheetKind {
  readonly spots?: true;
  readonly cards?: true;
  readonly book?: true;
  readonly opponent?: string;
}

/** Which of them is asked for; fails when several are. */
export function readSheetKind({ spots, cards, book, opponent }: RawSheetKind): SheetKind {
  const asked = [
    ...(spots === true ? ['spots' as const] : []),
    ...(cards === true ? ['cards' as const] : []),
    ...(book === true ? ['book' as const] : []),
    ...(opponent === undefined ? [] : ['opponent' as const]),
  ];
  const [kind, other] = asked;
  if (other !== undefined)
    throw badUse(`--${kind} and --${other} do not go together: ask for one, then for the other.`);
  return kind ?? 'sheet';
}

/** Where it is written when nobody says; `about` is the play's id or the opponent's. */
export function defaultSheetFile(kind: SheetKind, about: string): string {
  switch (kind) {
    case 'sheet':
      return `${about}-sheet.pdf`;
    case 'spots':
      return `${about}-spots.pdf`;
    case 'cards':
      return 'call-cards.pdf';
    case 'book':
      return 'playbook.pdf';
    case 'opponent':
      return `against-${about}.pdf`;
    default:
      return exhaustive(kind);
  }
}

function exhaustive(kind: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(kind)}`);
}
