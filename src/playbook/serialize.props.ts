import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoPlaybook } from './demo.ts';
import { hasErrors } from './diagnostic.ts';
import { parsePlaybook } from './parse.ts';
import type { Playbook } from './schema.ts';
import { serializePlaybook } from './serialize.ts';

const text = fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme' });
const grade = fc.integer({ min: 2, max: 10 }).map((halves) => halves / 2);
const hand = fc.constantFrom('left' as const, 'right' as const, 'both' as const);

/** The demo with another team, names with any letters in them, other measurements, and parts left out. */
const playbook: fc.Arbitrary<Playbook> = fc
  .record({
    name: text,
    notes: fc.option(text, { nil: undefined }),
    grades: fc.array(fc.record({ speed: grade, catch: grade, feed: grade }, { requiredKeys: [] }), {
      minLength: 10,
      maxLength: 10,
    }),
    hands: fc.array(hand, { minLength: 10, maxLength: 10 }),
    names: fc.array(text, { minLength: 10, maxLength: 10 }),
    plays: fc.subarray([...demoPlaybook.plays]),
    opponents: fc.option(fc.subarray([...(demoPlaybook.opponents ?? [])]), { nil: undefined }),
    penalty: fc.integer({ min: 50, max: 3000 }).map((tenths) => tenths / 10),
  })
  .map((parts) => ({
    ...demoPlaybook,
    team: {
      ...demoPlaybook.team,
      name: parts.name,
      roster: demoPlaybook.team.roster.map((player, i) => ({
        ...player,
        name: parts.names[i]!,
        hand: parts.hands[i]!,
        grades: parts.grades[i]!,
      })),
      ...(parts.notes !== undefined && { notes: parts.notes }),
    },
    plays: parts.plays,
    ...(parts.opponents !== undefined && { opponents: parts.opponents }),
    settings: { penaltySeconds: parts.penalty },
  }));

describe('serializePlaybook', () => {
  test('reading what was written gives an equal playbook', () => {
    fc.assert(
      fc.property(playbook, (value) => {
        const { value: back, diagnostics } = parsePlaybook(serializePlaybook(value));
        expect(hasErrors(diagnostics)).toBe(false);
        expect(back).toEqual(value);
      }),
    );
  });

  test('writing what was read gives the same text', () => {
    fc.assert(
      fc.property(playbook, (value) => {
        const once = serializePlaybook(value);
        expect(serializePlaybook(parsePlaybook(once).value!)).toBe(once);
      }),
    );
  });

  test('is JSON of the same value, with no line over 110 columns but for long texts', () => {
    fc.assert(
      fc.property(playbook, (value) => {
        const written = serializePlaybook(value);
        expect(JSON.parse(written)).toEqual(JSON.parse(JSON.stringify(value)));
        for (const line of written.split('\n'))
          if (!line.includes('"notes"')) expect(line.length).toBeLessThanOrEqual(111);
      }),
    );
  });
});
