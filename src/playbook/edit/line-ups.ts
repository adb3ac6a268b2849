import type { Play, SpotFit, SpotId } from '../../engine/index.ts';
import type { Playbook, Player } from '../schema.ts';
import { type LineUp, lineUpFor, type Side, toEnginePlay } from '../to-engine.ts';

/** The best six for a play from one side, for a screen. Plain data. */
export type SideLineUp =
  | {
      readonly kind: 'lineUp';
      readonly side: Side;
      /** In the order of the play's spots. */
      readonly men: readonly SpotMan[];
      /** What the six are worth together; higher is better, 0 for six usual men with the right hands. */
      readonly worth: number;
      /** For each of them, what happens when he is missing, in the same order. */
      readonly absences: readonly Absence[];
    }
  | { readonly kind: 'short'; readonly side: Side; readonly missing: number }
  /** The play cannot be read as it stands. */
  | { readonly kind: 'unread'; readonly side: Side };

export interface SpotMan {
  readonly spot: SpotId;
  readonly number: number;
  readonly name: string;
  /** Put there by the depth chart. */
  readonly pinned: boolean;
  readonly worth: number;
  /** Why he is there, the strongest reason first. */
  readonly reasons: readonly string[];
}

export interface Absence {
  readonly number: number;
  readonly name: string;
  /** Who comes in; undefined when nobody is left. */
  readonly comesIn?: number;
  /** Everybody who stands elsewhere then; `from` is absent for the man who comes in. */
  readonly moves: readonly { readonly number: number; readonly from?: SpotId; readonly to: SpotId }[];
  /** How much worth is lost; undefined when six cannot be placed. */
  readonly loss?: number;
}

/** The best six for both sides of a play with their reasons, and what each absence costs. */
export function lineUps(playbook: Playbook, playId: string): readonly SideLineUp[] {
  return (['right', 'left'] as const).map((side) => {
    const play = maybePlay(playbook, playId, side);
    return play === undefined ? { kind: 'unread', side } : sideLineUp(playbook, play, side);
  });
}

function maybePlay(playbook: Playbook, playId: string, side: Side): Play | undefined {
  if (!playbook.plays.some((play) => play.id === playId)) return undefined;
  try {
    return toEnginePlay(playbook, playId, side);
  } catch (thrown) {
    // A play is allowed to be wrong while it is written.
    if (thrown instanceof TypeError) return undefined;
    throw thrown;
  }
}

function sideLineUp(playbook: Playbook, play: Play, side: Side): SideLineUp {
  const lineUp = lineUpFor(playbook, play);
  const { assignment, players } = lineUp;
  if (assignment.kind === 'short') return { kind: 'short', side, missing: assignment.missing };
  return {
    kind: 'lineUp',
    side,
    men: assignment.fits.map((fit, i) => spotMan(fit, players[i]!)),
    worth: assignment.total,
    absences: players.map((player) => absenceOf(playbook, play, lineUp, player)),
  };
}

function spotMan({ spot, pinned, fit, reasons }: SpotFit, { number, name }: Player): SpotMan {
  return { spot, number, name, pinned, worth: fit, reasons };
}

/** The line-up without him, in which the depth chart has its next man: so the engine's own `replacements`, which know one man a spot, will not do. */
function absenceOf(playbook: Playbook, play: Play, before: LineUp, { number, name }: Player): Absence {
  const roster = playbook.team.roster.filter((player) => player.number !== number);
  const after = lineUpFor({ ...playbook, team: { ...playbook.team, roster } }, play);
  if (after.assignment.kind === 'short' || before.assignment.kind === 'short') return { number, name, moves: [] };
  const spot_byNumber = new Map(before.players.map((player, i) => [player.number, play.spots[i]!.id]));
  const moves = after.players.flatMap((player, i) => {
    const from = spot_byNumber.get(player.number);
    const to = play.spots[i]!.id;
    return from === to ? [] : [{ number: player.number, ...(from !== undefined && { from }), to }];
  });
  const comesIn = after.players.find((player) => !spot_byNumber.has(player.number))?.number;
  const loss = before.assignment.total - after.assignment.total;
  return { number, name, ...(comesIn !== undefined && { comesIn }), moves, loss };
}
