import fc from 'fast-check';
import { tableOfChances, type WrittenChance } from './table-of-chances.fixture.ts';

export interface DrawnTables {
  readonly cues: number;
  readonly actions: number;
  readonly chances: number;
  /** What worths are drawn from: whole numbers up to this, in 1024ths, which tables and sums of them keep to the last bit. */
  readonly most: number;
}

/** Small tables of up to three looks a chance, with whole numbers for weights. */
export function drawnChances({ cues, actions, chances, most }: DrawnTables): fc.Arbitrary<readonly WrittenChance[]> {
  const worth = fc.integer({ min: 0, max: most }).map((count) => count / 1024);
  const look = fc.record({
    cues: fc.nat((1 << cues) - 1),
    worths: fc.array(worth, { minLength: actions, maxLength: actions }),
  });
  const chance = fc.record({
    weight: fc.integer({ min: 1, max: 5 }),
    looks: fc.array(look, { minLength: 1, maxLength: 3 }),
    goOn: worth,
  });
  return fc.array(chance, { minLength: 1, maxLength: chances });
}

/** The same as tables. */
export function drawnTables(of: DrawnTables) {
  return drawnChances(of).map((chances) => tableOfChances(of.cues, chances));
}
