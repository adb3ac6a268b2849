import { describe, expect, it } from 'vitest';
import { demoPlaybook, hasErrors, type Playbook, parsePlaybook } from '../playbook/index.ts';
import { answerRequest } from './answer-request.ts';
import { onePlayText } from './one-play-text.ts';

const falls: Playbook = {
  ...demoPlaybook,
  opponents: [
    { id: 'falls', name: 'Falls', schemes: { 'box-zone': 3, 'northgate-net': 1 }, discipline: { all: 'sharp', c: 'loose' } },
  ],
};

describe('the playbook of one matchup', () => {
  it.each([
    ['box-zone', undefined],
    ['box-zone', 'falls'],
    ['northgate-net', 'falls'],
  ])('is free of faults: %s played by %s', (scheme, opponent) => {
    const text = onePlayText(falls, { play: 'ferry', scheme, ...(opponent && { opponent }) });
    expect(hasErrors(parsePlaybook(text).diagnostics)).toBe(false);
  });

  it('is the same for every built-in scheme, so that it is sent and read once', () => {
    const [one, other] = ['box-zone', 'jump'].map((scheme) =>
      onePlayText(falls, { play: 'ferry', scheme, opponent: 'falls' }),
    );
    expect(one).toBe(other);
  });

  it('leaves out what is said of men of a scheme that is not asked about', () => {
    const odd: Playbook = {
      ...falls,
      schemes: [{ id: 'odd', name: 'Odd', men: { q: [0, 5], r: [5, 5], s: [-5, 5] }, rows: [] }],
      opponents: [{ id: 'falls', name: 'Falls', schemes: { odd: 1, jump: 1 }, discipline: { q: 'loose', c: 'loose' } }],
    };
    const text = onePlayText(odd, { play: 'ferry', scheme: 'jump', opponent: 'falls' });
    expect(hasErrors(parsePlaybook(text).diagnostics)).toBe(false);
    expect(JSON.parse(text).opponents[0].discipline).toEqual({ c: 'loose' });
  });

  it('lets single men be undisciplined', () => {
    const tally = (opponent: string | undefined) =>
      answerRequest({
        kind: 'tally',
        setup: {
          document: onePlayText(falls, { play: 'ferry', scheme: 'box-zone', ...(opponent && { opponent }) }),
          play: 'ferry',
          scheme: 'box-zone',
          ...(opponent && { opponent }),
          side: 'right',
          penalty: 30,
          level: null,
          seed: 5,
        },
        range: { from: 0, to: 8 },
      });
    const [usual, loose] = [tally(undefined), tally('falls')];
    expect(loose.kind).toBe('tally');
    expect(loose).not.toEqual(usual);
  });
});
