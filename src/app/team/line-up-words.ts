import type { Absence, Player, SpotMan } from '../../playbook/index.ts';

/** "Odell Marsh", or "number 4" for who has no name yet. */
export function manText(number: number, roster: readonly Player[]): string {
  const name = roster.find((player) => player.number === number)?.name.trim();
  return name === undefined || name === '' ? `number ${number}` : name;
}

/** What happens without one of the six: who comes in, who shifts. */
export function absenceSentence({ comesIn, moves }: Absence, roster: readonly Player[]): string {
  if (comesIn === undefined) return 'nobody is left to come in.';
  const entry = moves.find(({ number }) => number === comesIn);
  const shifts = moves
    .filter(({ number, from }) => number !== comesIn && from !== undefined)
    .map(({ number, from, to }) => `${manText(number, roster)} goes from ${from} to ${to}`);
  const comes = `${manText(comesIn, roster)} comes in${entry === undefined ? '' : ` at ${entry.to}`}`;
  return `${[comes, ...shifts].join('; ')}.`;
}

/** A worth or a loss in points, to a tenth, with a true minus. */
export function pointsText(points: number): string {
  const rounded = Math.round(points * 10) / 10;
  const size = Math.abs(rounded);
  const sign = rounded < 0 ? '−' : '';
  return `${sign}${size} ${size === 1 ? 'point' : 'points'}`;
}

/** What a loss says: that it costs something, nothing, or that the coach's own order costs more than he does. */
export function lossText(loss: number | undefined): string {
  if (loss === undefined) return 'No six are left.';
  const rounded = Math.round(loss * 10) / 10;
  if (rounded > 0) return `${pointsText(rounded)} of fit less.`;
  if (rounded === 0) return 'As good a fit.';
  return `Gains ${pointsText(-rounded)}: without him a better six is free of what the depth order fixes.`;
}

/** Why a man stands where he does, as a line: "feeds 5 of 5, left hand inside". */
export function reasonsText({ reasons, pinned }: SpotMan): string {
  return [...(pinned ? ['fixed there by you'] : []), ...reasons].join(', ') || 'the spot asks for nothing special';
}

/** Those of the roster who can stand at a spot at all: everybody but goalkeepers, each number once. */
export function fieldMen(roster: readonly Player[]): readonly Player[] {
  return roster.filter(
    (player, i) => player.crosse !== 'goalkeeper' && roster.findIndex(({ number }) => number === player.number) === i,
  );
}
