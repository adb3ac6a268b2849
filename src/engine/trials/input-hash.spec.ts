import { describe, expect, it } from 'vitest';
import { canonicalJson, inputHash } from './input-hash.ts';

describe('canonical JSON', () => {
  it.each([
    { data: { b: 1, a: [2, { d: null, c: 'x' }] }, text: '{"a":[2,{"c":"x","d":null}],"b":1}' },
    { data: { gone: undefined, kept: true }, text: '{"kept":true}' },
    { data: [-0, 0.1, 1e21], text: '[0,0.1,1e+21]' },
    { data: 'a "quoted" line\n', text: '"a \\"quoted\\" line\\n"' },
    // Code units, not letters of any language: capitals before small letters, whatever the machine's own order.
    { data: { é: 1, z: 2, Z: 3 }, text: '{"Z":3,"z":2,"é":1}' },
  ])('$text', ({ data, text }) => expect(canonicalJson(data)).toBe(text));

  it.each([
    { name: 'a number without a value', data: [Number.NaN] },
    { name: 'a number without an end', data: { x: Number.POSITIVE_INFINITY } },
    { name: 'a function', data: { assign: () => 1 } },
    { name: 'nothing', data: undefined },
    { name: 'nothing in a list', data: [undefined] },
  ])('refuses $name', ({ data }) => expect(() => canonicalJson(data)).toThrow(TypeError));
});

describe('input hash', () => {
  // The definition written out in big integers, held to the two test values that its authors give for "a" and "foobar"
  // (isthe.com/chongo/tech/comp/fnv, from memory).
  it('agrees with the definition', () => {
    expect(reference('a')).toBe('af63dc4c8601ec8c');
    expect(reference('foobar')).toBe('85944171f73967e8');
    for (const text of ['', 'a', 'foobar', 'Zürich', '日本', '🥍 stick', 'x'.repeat(5000)]) {
      expect(inputHash(text)).toBe(reference(JSON.stringify(text)));
    }
  });

  it('does not depend on the order of keys, and does on every value', () => {
    const one = { play: 'a', seed: 1, schemes: ['x', 'y'] };
    const same = { schemes: ['x', 'y'], seed: 1, play: 'a' };
    expect(inputHash(same)).toBe(inputHash(one));
    const others = [
      { ...one, seed: 2 },
      { ...one, schemes: ['y', 'x'] },
      { ...one, level: null },
    ];
    expect(new Set([one, ...others].map(inputHash)).size).toBe(4);
  });
});

function reference(text: string): string {
  let hash = 0xcbf29ce484222325n;
  for (const byte of Buffer.from(text, 'utf8')) hash = ((hash ^ BigInt(byte)) * 0x100000001b3n) % 2n ** 64n;
  return hash.toString(16).padStart(16, '0');
}
