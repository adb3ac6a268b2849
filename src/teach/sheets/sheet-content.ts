import { inputHash, type SchemeReport } from '../../engine/index.ts';
import { lineUpFor, type Playbook, ruleCodeOf, schemeName, toEnginePlay } from '../../playbook/index.ts';
import { drawnField, type PaperName, type SheetContent } from '../../render/index.ts';

/** How pages are wanted, whatever stands on them. */
export interface SheetWishes {
  readonly side: 'left' | 'right';
  readonly paper: PaperName;
  /** The day they are made, as the reader writes it: see `dayWords`. */
  readonly date: string;
  readonly withNames: boolean;
}

/** What a play makes against one scheme, as a report of its trials says. */
export type SheetResult = Pick<SchemeReport, 'scheme' | 'goalsPerChance' | 'trials'>;

/**
 * All that pages say of one play; what it makes against the schemes only where it was simulated. RangeError for a play that the playbook does not
 * hold.
 */
export function sheetContent(
  playbook: Playbook,
  id: string,
  { side, paper, date, withNames }: SheetWishes,
  results: readonly SheetResult[] = [],
): SheetContent {
  const entry = playbook.plays.find((play) => play.id === id);
  if (entry === undefined) throw new RangeError(`unknown play: ${id}`);
  const play = toEnginePlay(playbook, id, side);
  const { players } = lineUpFor(playbook, play);
  return {
    play,
    set: entry.set,
    team: playbook.team.name,
    side,
    field: drawnField(ruleCodeOf(playbook).markings),
    men: players.map(({ number, name }, at) => ({ spot: play.spots[at]!.id, number, ...(withNames && { name }) })),
    worths: results.map(({ scheme, goalsPerChance }) => ({
      scheme: schemeName(playbook, scheme),
      goals: goalsPerChance,
    })),
    trials: results.reduce((least, { trials }) => Math.min(least, trials), Number.POSITIVE_INFINITY),
    version: inputHash(entry).slice(0, 6),
    date,
    paper,
  };
}

/** A day as it stands on a page: "1 March 2026", which no reader takes for the third of January. */
export function dayWords(day: Date): string {
  return day.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}
