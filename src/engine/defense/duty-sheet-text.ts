import type { Point } from '../geometry/point.ts';
import { createDutySheet, type DutySheet } from './duty-sheet.ts';
import type { Scheme } from './scheme.ts';
import { createSchemeView, readOffense } from './view.ts';

type Spots = readonly { readonly id: string; readonly at: Point }[];

/** The spots in the order of one lap of the ball: round the perimeter from left to right, then inside. */
export function lapOf(spots: Spots): readonly string[] {
  const view = createSchemeView(0);
  for (const [i, spot] of spots.entries()) {
    view.offense[2 * i] = spot.at.x;
    view.offense[2 * i + 1] = spot.at.y;
  }
  readOffense(view);
  const order = [...view.ring.slice(0, view.ringSize), ...view.crease.slice(0, view.creaseSize)];
  return order.map((man) => spots[man].id);
}

/**
 * The duties of a scheme against a set as a table in plain text, the ball passed once round from left to right and then inside:
 * a line per place of the ball, a column per defender, and last whom no duty names.
 */
export function dutySheetText(
  scheme: Scheme,
  set: { readonly name: string; readonly spots: Spots },
  balls: readonly string[] = lapOf(set.spots),
  star?: string,
): string {
  const sheet = createDutySheet(scheme, set.spots, balls, { star });
  const head = ['ball', ...sheet.defenders, 'open'];
  const lines = [head, ...cellsOf(sheet)];
  const widths = head.map((_, column) => Math.max(...lines.map((line) => line[column].length)));
  const text = lines.map((line) =>
    line
      .map((cell, column) => cell.padEnd(widths[column]))
      .join('  ')
      .trimEnd(),
  );
  return [set.name, ...text].join('\n');
}

function cellsOf(sheet: DutySheet): readonly (readonly string[])[] {
  return sheet.rows.map((row) => [row.ball, ...row.duties, row.open.length > 0 ? row.open.join(' ') : '-']);
}
