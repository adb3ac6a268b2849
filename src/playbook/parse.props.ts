import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoPlaybook } from './demo.ts';
import { diagnosticText, hasErrors } from './diagnostic.ts';
import { parsePlaybook } from './parse.ts';

type Container = Record<string | number, unknown>;

/** Every place of a document, as the object or list it lies in and its name or number there. */
function placesOf(value: unknown): readonly { readonly parent: Container; readonly key: string | number }[] {
  if (typeof value !== 'object' || value === null) return [];
  const parent = value as Container;
  const keys = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return keys.flatMap((key) => [{ parent, key }, ...placesOf(parent[key])]);
}

/** What slips into a file: another kind of value, half a phrase, a name that is not there, nothing at all. */
const slip = fc.oneof(
  fc.constant(undefined),
  fc.constantFrom(
    '',
    'TR',
    'TL pass',
    'WL pass LW',
    'QQ feed ZZ',
    'C cut to 90,90',
    'catch QQ',
    'call x + 1',
    'start',
    '2-3-1',
  ),
  // A question mark of the file's own is quoted as it is.
  fc.jsonValue({ maxDepth: 2 }).filter((value) => !JSON.stringify(value).includes('?')),
);

const edits = fc.array(fc.record({ place: fc.nat(), slip, name: fc.boolean() }), { minLength: 1, maxLength: 6 });

function broken(list: readonly { readonly place: number; readonly slip: unknown; readonly name: boolean }[]): string {
  const document = JSON.parse(JSON.stringify(demoPlaybook));
  for (const { place, slip: value, name } of list) {
    const places = placesOf(document);
    const { parent, key } = places[place % places.length]!;
    if (name && !Array.isArray(parent)) {
      // The name is what is misspelt.
      parent[`${key}x`] = parent[key];
      delete parent[key];
    } else if (value === undefined && !Array.isArray(parent)) delete parent[key];
    else parent[key] = value ?? null;
  }
  return JSON.stringify(document, null, 2);
}

describe('parsePlaybook, on a playbook with slips', () => {
  test('never throws, and either gives a playbook or says in words what is wrong', () => {
    fc.assert(
      fc.property(edits, (list) => {
        const { value, diagnostics } = parsePlaybook(broken(list));
        expect(value === undefined).toBe(hasErrors(diagnostics));
        for (const one of diagnostics) expect(diagnosticText(one)).not.toMatch(/undefined|NaN|\[object|"\?"/);
      }),
      { numRuns: 400 },
    );
  });
});
