import { describe, expect, it } from 'vitest';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { benchCard } from './bench-card.ts';
import { type Call, callCards, cardSize } from './call-cards.ts';
import { bestAndWorst, firstReadWords, shortScheme, triggerWord } from './call-words.ts';
import { papers } from './page.ts';
import { contentOf, expectReadable, longPlay, wordsOf } from './sheet-content.fixture.ts';

const plays = demoPlaybook.plays.map(({ id }) => toEnginePlay(demoPlaybook, id));
const calls = plays.map((play, at): Call => ({ number: at + 1, content: contentOf(play) }));
const many = (count: number, paper: 'letter' | 'a4' = 'letter'): readonly Call[] =>
  Array.from({ length: count }, (_, at) => ({ number: at + 1, content: contentOf(plays[at % 3]!, { paper }) }));

describe('cards for the wrist', () => {
  it('are three inches by one and a half', () => {
    expect(cardSize).toEqual({ width: 3 * 72, height: 1.5 * 72 });
    const edges = callCards(calls)[0]!.marks.filter((mark) => mark.kind === 'box' && mark.edge > 0);
    expect(edges).toHaveLength(calls.length);
    for (const edge of edges) expect(edge).toMatchObject(cardSize);
  });

  it('say number, name, the word that begins it and what it beats most', () => {
    const words = wordsOf(callCards(calls)[0]!);
    for (const said of ['1', 'Lantern', 'SWING', 'Best against', 'Scheme 3, Scheme 1']) expect(words).toContain(said);
    expect(words).not.toContain('Scheme 0');
  });

  it('say so when nothing was tried', () => {
    const untried = calls.map(({ number, content }) => ({ number, content: { ...content, worths: [] } }));
    expect(wordsOf(callCards(untried)[0]!)).toContain('Not tried yet');
  });

  it.each(['letter', 'a4'] as const)(
    'lie side by side on as many pages as they need, none over another (%s)',
    (paper) => {
      const pages = callCards(many(30, paper), 5);
      expect(pages.map(({ title }) => title)).toEqual(['Call cards', 'Call cards, page 2', 'Call cards, page 3']);
      for (const page of pages) expectReadable(page, 11);
      const all = pages.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'box' && mark.edge > 0));
      expect(all).toHaveLength(30);
    },
  );

  it('have marks to cut along in line with every edge, and none on a card', () => {
    const [page] = callCards(many(12));
    const boxes = page!.marks.flatMap((mark) => (mark.kind === 'box' && mark.edge > 0 ? [mark] : []));
    const rules = page!.marks.flatMap((mark) => (mark.kind === 'rule' && mark.width < 0.75 ? [mark] : []));
    for (const { left, top, width, height } of boxes) {
      for (const x of [left, left + width]) expect(rules.some(({ from, to }) => from.x === x && to.x === x)).toBe(true);
      for (const y of [top, top + height]) expect(rules.some(({ from, to }) => from.y === y && to.y === y)).toBe(true);
      for (const { from, to } of rules) {
        const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2];
        expect(x > left && x < left + width && y > top && y < top + height).toBe(false);
      }
    }
  });

  it('hold names as long as a playbook allows', () => {
    const name = 'Wwwwwwwwww '.repeat(7).trim();
    const worths = [name, `${name} 2`, 'C', 'D'].map((scheme, at) => ({
      scheme,
      goals: { mean: 1 - at / 10, low: 0, high: 1 },
    }));
    const [page] = callCards([{ number: 500, content: contentOf({ ...plays[0]!, name }, { worths }) }]);
    expectReadable(page!, 11);
    const [box] = page!.marks.filter((mark) => mark.kind === 'box' && mark.edge > 0);
    for (const mark of page!.marks) {
      if (mark.kind !== 'text' || box?.kind !== 'box' || mark.text.startsWith('Cut')) continue;
      expect(mark.at.y).toBeGreaterThan(box.top + mark.size * 0.73);
      expect(mark.at.y).toBeLessThan(box.top + box.height);
    }
  });

  it('are none without a call', () => {
    expect([callCards([]), benchCard([])]).toEqual([[], []]);
  });
});

describe('the card for the bench', () => {
  it.each(['letter', 'a4'] as const)('has every call on one page that lies on its side (%s)', (paper) => {
    const [page, ...more] = benchCard(many(3, paper), 24);
    expect(more).toEqual([]);
    expect([page!.width, page!.height]).toEqual([papers[paper].height, papers[paper].width]);
    expectReadable(page!, 11);
    const words = wordsOf(page!);
    for (const { name } of plays) expect(words).toContain(name);
    for (const head of ['Call', 'Set', 'Starts with', 'Best against', 'Not against', 'First read']) {
      expect(words).toContain(head);
    }
    expect(words).toContain('500 against each scheme');
  });

  it('goes on overleaf under the same titles', () => {
    const pages = benchCard(many(40));
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) {
      expectReadable(page, 11);
      expect(wordsOf(page)).toContain('Starts with');
    }
    const numbers = pages.flatMap(({ marks }) =>
      marks.flatMap((mark) => (mark.kind === 'text' && /^\d+$/.test(mark.text) ? [Number(mark.text)] : [])),
    );
    expect(numbers).toEqual(Array.from({ length: 40 }, (_, at) => at + 1));
  });
});

describe('the words of a call', () => {
  it.each([
    ['Four-man rotation, locked crease', 'Four-man rotation'],
    ["Northgate's net: low man behind", "Northgate's net"],
    ['Jump', 'Jump'],
    [': odd', ': odd'],
  ])('%s is %s', (name, short) => {
    expect(shortScheme(name)).toBe(short);
  });

  it('begin with the name of the first step, or with what is done in it', () => {
    expect(triggerWord(plays[0]!)).toBe('SWING');
    expect(triggerWord(longPlay(plays[0]!, 3))).toBe('PASS');
  });

  it('tell best and worst apart, and never one scheme as both', () => {
    const goals = (mean: number) => ({ mean, low: mean, high: mean });
    const worths = ['a', 'b', 'c'].map((scheme, at) => ({ scheme, goals: goals(at) }));
    const names = ({ best, worst }: ReturnType<typeof bestAndWorst>) =>
      [best, worst].map((some) => some.map(({ scheme }) => scheme));
    expect(names(bestAndWorst(worths, 2))).toEqual([['c'], ['a']]);
    expect(names(bestAndWorst(worths.slice(0, 1), 2))).toEqual([[], []]);
    expect(names(bestAndWorst([...worths, { scheme: 'd', goals: goals(9) }], 2))).toEqual([
      ['d', 'c'],
      ['a', 'b'],
    ]);
  });

  it('say that no read is taught', () => {
    expect(firstReadWords({ ...plays[0]!, reads: [] })).toBe('None: as it is drawn.');
  });
});
