import { clockText, type NewChance } from '../../playbook/index.ts';

/** What a cell was read as: a part of a chance, or what is wrong with it in a sentence. */
export type CellRead =
  | { readonly kind: 'read'; readonly change: (chance: NewChance) => NewChance }
  | { readonly kind: 'problem'; readonly text: string };

/** Words without regard to the size of their letters, blanks, dashes and humps. */
export function plainWords(cell: string): string {
  return cell
    .trim()
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ');
}

/** Seconds as they stand on a scoreboard; parts of a second as they are. */
export function clockCell(seconds: number): string {
  return Number.isInteger(seconds) ? clockText(seconds) : String(seconds);
}

/** Seconds of "7:11" or "431"; undefined for what is no time. */
export function secondsOf(cell: string): number | undefined {
  const parts = /^(\d{1,3}):([0-5]\d(?:\.\d+)?)$/.exec(cell);
  return parts === null ? numberOf(cell) : Number(parts[1]) * 60 + Number(parts[2]);
}

/** A number of 0 or more; undefined for what is none. */
export function numberOf(cell: string): number | undefined {
  return /^(?:\d+(?:\.\d*)?|\.\d+)(?:e-?\d+)?$/i.test(cell) ? Number(cell) : undefined;
}

/** Whether a cell says yes; undefined when it says neither. */
export function yesOf(cell: string): boolean | undefined {
  const plain = cell.toLowerCase();
  if (['yes', 'y', 'true', '1', 'x'].includes(plain)) return true;
  return ['no', 'n', 'false', '0'].includes(plain) ? false : undefined;
}

export function yesText(value: boolean): string {
  return value ? 'yes' : 'no';
}

/** Letters of a cell that are shown in a sentence. */
const longestShown = 30;

/** What stands in a cell, as it is told in a sentence. */
export function quoted(cell: string): string {
  return `"${cell.length > longestShown ? `${cell.slice(0, longestShown)}…` : cell}"`;
}

export function read(change: (chance: NewChance) => NewChance): CellRead {
  return { kind: 'read', change };
}

export function problem(words: string): CellRead {
  return { kind: 'problem', text: words };
}
