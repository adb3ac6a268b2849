import { shotValue } from '../ball/shot-table.ts';
import type { ChanceModel } from '../chance/model.ts';
import { usualField } from '../field/usual-field.ts';

/** Goal odds of a shot from each cell of a grid in front of the goal. Plain data. */
export interface ShotHeat {
  /** Middle of the first cell, and the distance between middles, yards. Cells run along x first, then up. */
  readonly left: number;
  readonly bottom: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly odds_byCell: Float32Array;
}

/** The part of the field that shots come from. Yards. */
const halfWidth = 15;
const top = 20;

/**
 * What a shot by this attacker is worth from everywhere in front of the goal: set feet, keeper in his place, nobody near.
 *
 * `shooter` is an offense index; `cell` is the cells' size in yards, more than 0, 1 when absent. RangeError otherwise.
 * In the crease, where he may not stand, and behind the goal line it is 0.
 */
export function shotHeat(model: ChanceModel, shooter: number, cell = 1): ShotHeat {
  const table = model.shotTables[shooter];
  if (table === undefined) throw new RangeError(`invalid shooter: ${shooter} (expected 0 to 5)`);
  if (!(cell > 0)) throw new RangeError(`invalid cell: ${cell} (expected more than 0)`);
  const columns = Math.floor((2 * halfWidth) / cell);
  const rows = Math.floor(top / cell);
  const left = (-cell * (columns - 1)) / 2;
  const bottom = cell / 2;
  const odds_byCell = new Float32Array(columns * rows);
  for (let at = 0; at < odds_byCell.length; at++) {
    const x = left + cell * (at % columns);
    const y = bottom + cell * Math.floor(at / columns);
    odds_byCell[at] = x * x + y * y < creaseRadius * creaseRadius ? 0 : shotValue(table, x, y, 0, 0);
  }
  return { left, bottom, cell, columns, rows, odds_byCell };
}

/** No attacker may be in the crease. */
const { creaseRadius } = usualField;
