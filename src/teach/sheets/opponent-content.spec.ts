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

describe('what was seen of an opponent', () => {
  const opponent = demoPlaybook.opponents![0]!;
  const chance = (id: string, scheme: string, date: string) =>
    ({ id, side: 'others', opponent: 'copper-falls', result: 'saved', scheme, date }) as const;
  const at = (x: number, y: number): [number, number] => [x, y];
  const shots = (goals: number, saved: number, x: number, y: number) => [
    ...Array.from({ length: goals }, () => ({ at: at(x, y), result: 'goal' as const })),
    ...Array.from({ length: saved }, () => ({ at: at(x, y), result: 'saved' as const })),
  ];
  const book = {
    ...demoPlaybook,
    opponents: [{ ...opponent, keeper: [...shots(18, 4, -2, 1), ...shots(6, 14, 2, 1)] }],
    chances: [
      chance('a', 'box-zone', '2026-03-01'),
      chance('b', 'box-zone', '2026-03-08'),
      chance('c', 'jump', '2026-03-02'),
    ],
  };
  const known = opponentContent(book, 'copper-falls', wishes, found);
  const texts = opponentPage(known).marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

  it('stands on his page with how often and when last', () => {
    expect(known.seen?.map(({ times, lastDay }) => `${times} ${lastDay}`)).toEqual([
      '2 8 March 2026',
      '1 2 March 2026',
    ]);
    expect(texts.join(' ')).toContain('Seen so far: Box-and-one zone 2 times, last on 8 March 2026; Jump 1 time');
  });

  it('says where his goalkeeper is beaten, in counts, on a page that still fits', () => {
    expect(texts).toEqual(expect.arrayContaining(['18/22', '6/20', 'Their goalkeeper']));
    expect(texts.join(' ')).toMatch(/beaten most low left: more than luck explains/);
  });

  it('is not on the page of an opponent of whom nothing was seen', () => {
    expect(content).not.toHaveProperty('seen');
    expect(content).not.toHaveProperty('keeper');
  });
});
