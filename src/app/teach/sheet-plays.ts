import type { Opponent, Playbook } from '../../playbook/index.ts';
import type { OpponentContent, PaperName, SheetContent } from '../../render/index.ts';
import {
  dayWords,
  type MeasuredPlay,
  opponentContent,
  type PlaySheetKind,
  type SheetKind,
  sheetContent,
} from '../../teach/index.ts';
import type { SheetQuestion } from './sheet-question.ts';

/** What stands on the pages that are shown. */
export type SheetsShown =
  | { readonly kind: PlaySheetKind; readonly plays: readonly SheetContent[] }
  | { readonly kind: 'opponent'; readonly content: OpponentContent };

export interface SheetLook {
  readonly kind: SheetKind;
  readonly paper: PaperName;
  readonly withNames: boolean;
}

/** The opponent whose page is shown: the one that was chosen, else the playbook's first. */
export function opponentOnSheet({ opponents }: Playbook, chosen: string | undefined): Opponent | undefined {
  return opponents?.find(({ id }) => id === chosen) ?? opponents?.[0];
}

/** What stands on the pages, with what is known by now of what each play makes. */
export function playsOnSheet(
  playbook: Playbook,
  { asked }: Extract<SheetQuestion, { kind: 'asked' }>,
  { kind, paper, withNames }: SheetLook,
  found: readonly (MeasuredPlay | undefined)[],
): SheetsShown {
  const wishes = { side: asked.side, paper, withNames, date: dayWords(new Date()) };
  if (kind === 'opponent') {
    const known = found.filter((one) => one !== undefined);
    return { kind, content: opponentContent(playbook, asked.opponent!, wishes, known) };
  }
  const results = new Map(found.flatMap((one) => (one === undefined ? [] : [[one.play, one.results] as const])));
  return { kind, plays: asked.plays.map((play) => sheetContent(playbook, play, wishes, results.get(play))) };
}
