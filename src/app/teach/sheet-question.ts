import type { Opponent, Playbook } from '../../playbook/index.ts';
import { isOfOnePlay, type PlaysAsked, type SheetKind, sharesOfOpponent } from '../../teach/index.ts';
import { usualSeed } from '../answers/ask.ts';
import { readPlayOf } from '../play/play-reading.ts';
import { schemeChoices, usualSchemes } from '../schemes/scheme-choices.ts';

/** What is wanted on paper. */
export interface WantedSheet {
  readonly kind: SheetKind;
  readonly play: string;
  /** Whose page is wanted; undefined when the playbook has no opponent. */
  readonly opponent: string | undefined;
  readonly side: 'left' | 'right';
  /** Schemes chosen on Play; all with a man less when `null`. */
  readonly chosen: readonly string[] | null;
}

/** What has to be tried for it. */
export type SheetQuestion =
  | {
      readonly kind: 'asked';
      readonly asked: PlaysAsked;
      /** The opponent's name; empty where the pages are about plays. */
      readonly about: string;
      /** Names of plays that cannot be played and stand on no page. */
      readonly leftOut: readonly string[];
    }
  /** There is nothing to put on paper: why, in a sentence. */
  | { readonly kind: 'nothing'; readonly reason: string };

/** Which plays go on the pages, and against what they are tried. */
export function sheetQuestion(playbook: Playbook, wanted: WantedSheet): SheetQuestion {
  const { kind, play, side } = wanted;
  const opponent = playbook.opponents?.find(({ id }) => id === wanted.opponent);
  if (kind === 'opponent' && opponent === undefined) {
    return { kind: 'nothing', reason: 'The playbook has no opponent yet. Add one in the Scout place.' };
  }
  const { plays: _, ...standing } = playbook;
  const entries = playbook.plays.filter((entry) => (isOfOnePlay(kind) ? entry.id === play : entry.archived !== true));
  const whole = entries.filter((entry) => readPlayOf({ ...standing, plays: [] }, entry).isWhole);
  const leftOut = entries.filter((entry) => !whole.includes(entry)).map(({ name }) => name);
  if (whole.length === 0)
    return { kind: 'nothing', reason: 'No play can be put on paper: each has something to fix first.' };
  const met = kind === 'opponent' ? metBy(playbook, opponent!) : { schemes: schemesOf(playbook, wanted.chosen) };
  return {
    kind: 'asked',
    about: kind === 'opponent' ? opponent!.name : '',
    leftOut,
    asked: { ...met, plays: whole.map(({ id }) => id), side, penalty: null, level: null, seed: usualSeed },
  };
}

function metBy(playbook: Playbook, opponent: Opponent): Pick<PlaysAsked, 'schemes' | 'weights' | 'opponent'> {
  const shares = sharesOfOpponent(playbook, opponent);
  return {
    schemes: shares.map(({ scheme }) => scheme),
    weights: shares.map(({ share }) => share),
    opponent: opponent.id,
  };
}

function schemesOf(playbook: Playbook, chosen: readonly string[] | null): readonly string[] {
  const choices = schemeChoices(playbook);
  return chosen?.filter((id) => choices.some((choice) => choice.id === id)) ?? usualSchemes(choices);
}
