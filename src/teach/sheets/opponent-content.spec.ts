import { describe, expect, it } from 'vitest';
import { demoPlaybook } from '../../playbook/index.ts';
import { opponentPage } from '../../render/index.ts';
import { opponentContent, sharesOfOpponent } from './opponent-content.ts';

const wishes = { side: 'right', paper: 'letter', date: '1 March 2026' } as const;
const goals = (mean: number) => ({ mean, low: mean - 0.02, high: mean + 0.02 });
const found = demoPlaybook.plays.map(({ id }, at) => ({
  play: id,
  goals: goals(0.2 + 0.01 * at),
  results: [
    { scheme: 'box-string', goalsPerChance: goals(0.1 + 0.01 * at), trials: 400 },
    { scheme: 'box-zone', goalsPerChance: goals(0.3 + 0.01 * at), trials: 500 },
  ],
}));
const content = opponentContent(demoPlaybook, 'copper-falls', wishes, found);

describe('what a page says of an opponent', () => {
  it('is what they play most first, in shares of all', () => {
    expect(content.schemes.map(({ share }) => share)).toEqual([0.75, 0.25]);
    const [opponent] = demoPlaybook.opponents!;
    const unknown = { ...opponent!, schemes: { 'box-zone': 1, 'nobody-knows': 9 } };
    expect(sharesOfOpponent(demoPlaybook, unknown)).toEqual([{ scheme: 'box-zone', share: 1 }]);
  });

  it('is the plays with the best first, each with what it makes against every scheme of theirs, and its number in the playbook', () => {
    expect(content.plays.map(({ number }) => number)).toEqual([3, 2, 1]);
    expect(content.plays[0]!.byScheme.map(({ mean }) => mean.toFixed(2))).toEqual(['0.32', '0.12']);
    expect(content.trials).toBe(400);
  });

  it('names who is late as the reader sees him, on either side', () => {
    const [opponent] = demoPlaybook.opponents!;
    const book = { ...demoPlaybook, opponents: [{ ...opponent!, discipline: { all: 'sharp', tr: 'loose' } as const }] };
    for (const side of ['right', 'left'] as const) {
      const [{ men } = { men: [] }] = opponentContent(book, 'copper-falls', { ...wishes, side }).schemes;
      const late = men.filter(({ discipline }) => discipline === 'loose');
      expect(late.map(({ name }) => name)).toEqual(['tr']);
      expect(late[0]!.home.x).toBeGreaterThan(0);
    }
  });

  it('is the same page for an opponent of whom nothing is known, but for what is not known', () => {
    const book = { ...demoPlaybook, opponents: [{ id: 'new', name: 'Somebody new' }] };
    const page = opponentPage(opponentContent(book, 'new', wishes));
    expect(page.marks.some((mark) => mark.kind === 'text' && mark.text.startsWith('Not known yet'))).toBe(true);
    expect(() => opponentContent(demoPlaybook, 'nobody', wishes)).toThrow(RangeError);
  });
});
