import { describe, expect, it } from 'vitest';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { type Bookmark, printedBook } from './printed-book.ts';
import { contentOf, expectReadable, textsOf, wordsOf } from './sheet-content.fixture.ts';

const plays = demoPlaybook.plays.map(({ id }) => toEnginePlay(demoPlaybook, id));

describe.each([3, 40])('a playbook of %d plays', (count) => {
  const contents = Array.from({ length: count }, (_, at) => {
    const play = plays[at % 3]!;
    return contentOf({ ...play, name: `${play.name} ${at + 1}` });
  });
  const { pages, outline } = printedBook(contents);

  it('counts its pages at their feet', () => {
    for (const [at, page] of pages.entries()) {
      const last = textsOf(page)
        .filter(({ text }) => /^\d+$/.test(text))
        .at(-1);
      expect(last?.text, page.title).toBe(String(at + 1));
      expect(last!.at.y).toBeGreaterThan(page.height - 80);
    }
  });

  it('says in its contents on which page each play begins', () => {
    const lines = pages
      .filter(({ title }) => title.endsWith('man-up playbook') || title.startsWith('Contents'))
      .flatMap(textsOf);
    for (const { play } of contents) {
      const entry = lines.find(({ text }) => text.endsWith(`. ${play.name}`))!;
      const number = lines.find(({ at, text }) => at.y === entry.at.y && /^\d+$/.test(text))!;
      expect(pages[Number(number.text) - 1]!.title).toBe(`${play.name}: play sheet`);
    }
  });

  it('has an outline by play whose entries lead to pages of that title', () => {
    const below = ({ title, page, children }: Bookmark): void => {
      if (children.length === 0 && title !== 'Contents') expect(pages[page]!.title).toBe(title);
      for (const child of children) below(child);
    };
    for (const bookmark of outline) below(bookmark);
    expect(outline.map(({ title }) => title)).toEqual([
      'Contents',
      ...contents.map(({ play }, at) => `${at + 1}. ${play.name}`),
      'Bench card',
      'Call cards',
    ]);
  });

  it('can be read on every page', () => {
    for (const page of pages) expectReadable(page, page.title.endsWith('play sheet') ? 9 : 11);
  });

  it('has every man of every play, and every call', () => {
    const titles = pages.map(({ title }) => title);
    for (const { play } of contents) for (const { id } of play.spots) expect(titles).toContain(`${play.name}: ${id}`);
    const cards = pages
      .filter(({ title }) => title.startsWith('Call cards'))
      .map(wordsOf)
      .join(' ');
    for (const { play } of contents) expect(cards).toContain(play.name);
  });
});

it('a playbook is none without a play', () => {
  expect(() => printedBook([])).toThrow(RangeError);
});
