import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { levels } from '../../engine/index.ts';
import { type Player, playbookSchema } from '../schema.ts';
import { readRosterTable } from './roster-table.ts';
import { writeRosterTable } from './write-roster-table.ts';

const grade = fc.option(
  fc.integer({ min: 2, max: 10 }).map((half) => half / 2),
  { nil: undefined },
);
const readings = fc.option(
  fc.array(
    fc.integer({ min: 1, max: 9999 }).map((tenths) => tenths / 10),
    { minLength: 1, maxLength: 5 },
  ),
  {
    nil: undefined,
  },
);
/** A name, or a note, as it comes out of a cell: no blanks round it. A comma would turn a name round. */
const words = (max: number) =>
  fc
    .array(fc.constantFrom('Noel', 'Arden', 'd’Or', 'Ångström', 'Jr.', '=1+1', '"x"'), { minLength: 1, maxLength: max })
    .map((all) => all.join(' '));

const player: fc.Arbitrary<Player> = fc
  .record({
    number: fc.integer({ min: 0, max: 999 }),
    name: words(4),
    hand: fc.constantFrom('left', 'right', 'both'),
    crosse: fc.constantFrom('short', 'pole', 'goalkeeper'),
    role: fc.option(fc.constantFrom('attack', 'midfield', 'defense', 'lsm', 'goalkeeper'), { nil: undefined }),
    level: fc.option(fc.constantFrom(...levels), { nil: undefined }),
    absent: fc.option(fc.constant(true), { nil: undefined }),
    notes: fc.option(words(10), { nil: undefined }),
    grades: fc.option(fc.record({ speed: grade, feed: grade, offHand: grade, sense: grade }), { nil: undefined }),
    measured: fc.option(
      fc.record({
        sprint20ydSeconds: readings,
        shotSpeedMph: readings,
        heightCm: fc.option(
          fc.integer({ min: 900, max: 2300 }).map((tenths) => tenths / 10),
          { nil: undefined },
        ),
        onGoal: fc.option(fc.constant({ hits: 3, shots: 7 }), { nil: undefined }),
      }),
      { nil: undefined },
    ),
  })
  .map((loose) => stripped(loose) as Player);

/** Without what is undefined or empty, as a playbook is written. */
function stripped(value: unknown): unknown {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value;
  const entries = Object.entries(value)
    .map(([key, part]) => [key, stripped(part)] as const)
    .filter(
      ([, part]) => part !== undefined && !(typeof part === 'object' && Object.keys(part as object).length === 0),
    );
  return Object.fromEntries(entries);
}

describe('a roster as a table', () => {
  test('that was written reads back', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(player, { selector: ({ number }) => number, minLength: 1, maxLength: 8 }),
        (players) => {
          expect(readRosterTable(writeRosterTable(players)).players).toEqual(players);
        },
      ),
    );
  });

  test('of whatever text never throws, and what is read is what a playbook may hold', () => {
    const roster = playbookSchema.shape.team.shape.roster;
    const cell = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 12 }),
      fc.constantFrom(
        '#',
        'Name',
        'Hand',
        'Shot (mph)',
        'Height',
        'Speed',
        'Notes',
        '7',
        '12',
        'L',
        'Noel Arden',
        '58 61',
        '5-10',
        '4',
      ),
    );
    fc.assert(
      fc.property(fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 6 }), (rows) => {
        const { players } = readRosterTable(rows);
        expect(roster.safeParse(players).success, JSON.stringify(players)).toBe(true);
        expect(new Set(players.map(({ number }) => number)).size).toBe(players.length);
      }),
      { numRuns: 500 },
    );
  });
});
