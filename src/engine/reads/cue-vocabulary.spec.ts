import { describe, expect, it } from 'vitest';
import { cueVocabulary } from './cue-vocabulary.ts';

describe.each([0, 1, 2, 3, 4, 5])('the cues of man %d', (carrier) => {
  const cues = cueVocabulary(carrier);

  it('fit into the bits of a table, each once', () => {
    expect(cues.length).toBeLessThanOrEqual(30);
    expect(new Set(cues.map((cue) => JSON.stringify(cue))).size).toBe(cues.length);
  });

  it('begin with his own, and ask every mate the same, and never himself', () => {
    const asked = cues.map((cue) => ('who' in cue ? cue.who : -1));
    const firstMate = asked.findIndex((who) => who >= 0);
    expect(asked.slice(firstMate).every((who) => who >= 0 && who !== carrier)).toBe(true);
    const mates = [0, 1, 2, 3, 4, 5].filter((mate) => mate !== carrier);
    const kinds = new Set(cues.slice(firstMate).map(({ kind }) => kind));
    expect(asked.slice(firstMate)).toEqual([...kinds].flatMap(() => mates));
  });
});
