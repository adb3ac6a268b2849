import { type DutyBoard, type DutyKind, duty } from './duty.ts';

/**
 * One defender's duty as people read it, with the attackers named by `names`.
 *
 * `dutyWords(board, 0, ['P', 'TR', ...])` is 'ball', 'TR', 'splits TL + WL', 'fronts C', 'holds (0, 8)' and so on.
 */
export function dutyWords(board: DutyBoard, defender: number, names: readonly string[]): string {
  const a = nameOf(board.a[defender], names);
  const b = nameOf(board.b[defender], names);
  const kind = board.kind[defender] as DutyKind;
  switch (kind) {
    case duty.place:
      return `holds (${yards(board.x[defender])}, ${yards(board.y[defender])})${watches(a, b)}`;
    case duty.ball:
      return 'ball';
    case duty.man:
      return a;
    case duty.split:
      return `splits ${a} + ${b}`;
    case duty.lane:
      return b === '' ? `lane to ${a}` : `lane to ${a}, ${b} behind him`;
    case duty.lock:
      return b === '' ? `locks ${a}` : `locks ${a}, cheats to ${b}`;
    case duty.pipe:
      return `pipe for ${a}`;
    case duty.front:
      return `fronts ${a}`;
    default:
      return exhaustive(kind);
  }
}

function nameOf(man: number, names: readonly string[]): string {
  return man < 0 ? '' : (names[man] ?? String(man));
}

function watches(a: string, b: string): string {
  if (a === '' && b === '') return '';
  return a === '' || b === '' ? `, watches ${a}${b}` : `, watches ${a} and ${b}`;
}

function yards(value: number): string {
  // Adding zero turns -0 into 0.
  return String(Math.round(10 * value) / 10 + 0);
}

function exhaustive(value: never): never {
  throw new RangeError(`unknown duty: ${String(value)}`);
}
