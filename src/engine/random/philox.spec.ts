import { describe, expect, it } from 'vitest';
import { philoxInto } from './philox.ts';

// The generator's published known answers: Random123, tests/kat_vectors, lines "philox4x32 10".
const knownAnswers: readonly { name: string; counter: number[]; key: number[]; words: number[] }[] = [
  { name: 'all zero', counter: [0, 0, 0, 0], key: [0, 0], words: [0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8] },
  {
    name: 'all ones',
    counter: [0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff],
    key: [0xffffffff, 0xffffffff],
    words: [0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd],
  },
  {
    name: 'digits of pi',
    counter: [0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344],
    key: [0xa4093822, 0x299f31d0],
    words: [0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1],
  },
];

describe('philoxInto', () => {
  it.each(knownAnswers)('gives the published words for $name', ({ counter, key, words }) => {
    const out = new Uint32Array(4);
    philoxInto(counter[0]!, counter[1]!, counter[2]!, counter[3]!, key[0]!, key[1]!, out);
    expect([...out]).toEqual(words);
  });
});
