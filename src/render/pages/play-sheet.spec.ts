import { describe, expect, it } from 'vitest';
import { mirrorPlay, type Play } from '../../engine/index.ts';
import { demoPlaybook, ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import { drawnField } from '../field-scene.ts';
import { playSteps } from '../play-steps.ts';
import { textWidth } from './measure-text.ts';
import { type Page, type PageText, pageMargin, papers } from './page.ts';
import { pageToSvg } from './page-svg.ts';
import { playSheet, type SheetContent } from './play-sheet.ts';

const field = drawnField(ruleCodeOf(demoPlaybook).markings);

function contentOf(play: Play, more: Partial<SheetContent> = {}): SheetContent {
  return {
    play,
    set: '2-3-1',
    team: 'Tamarack Harriers',
    side: 'right',
    field,
    men: play.spots.map(({ id }, at) => ({ spot: id, number: at + 10 })),
    worths: [0.2, 0.35, 0.28, 0.4].map((mean, at) => ({
      scheme: `Scheme ${at}`,
      goals: { mean, low: mean - 0.03, high: mean + 0.03 },
    })),
    trials: 500,
    version: 'abc123',
    date: '1 March 2026',
    paper: 'letter',
    ...more,
  };
}

const textsOf = ({ marks }: Page): readonly PageText[] => marks.filter((mark) => mark.kind === 'text');
const wordsOf = (page: Page): string =>
  textsOf(page)
    .map(({ text }) => text)
    .join(' ');

describe.each(demoPlaybook.plays.map(({ id }) => id))('the sheet of %s', (id) => {
  const play = toEnginePlay(demoPlaybook, id);
  it.each(['letter', 'a4'] as const)('stands inside the margins of the paper (%s)', (paper) => {
    const page = playSheet(contentOf(play, { paper }));
    const { width, height } = papers[paper];
    expect([page.width, page.height]).toEqual([width, height]);
    for (const { at, text, size, weight } of textsOf(page)) {
      expect(at.x).toBeGreaterThanOrEqual(pageMargin - 1e-9);
      expect(at.x + textWidth(text, size, weight), text).toBeLessThanOrEqual(width - pageMargin + 0.5);
      expect(at.y).toBeLessThanOrEqual(height - pageMargin + 0.5);
    }
  });

  it('has a picture for each step, and words for each', () => {
    const page = playSheet(contentOf(play));
    expect(page.marks.filter(({ kind }) => kind === 'picture')).toHaveLength(playSteps(play).length);
    for (const { beat } of playSteps(play)) {
      for (const { by } of beat.actions) expect(wordsOf(page)).toContain(by);
    }
  });

  it('says each man’s job and number, the reads, and what can be read at arm’s length', () => {
    const page = playSheet(contentOf(play));
    for (const { number } of contentOf(play).men) expect(wordsOf(page)).toContain(String(number));
    expect(wordsOf(page)).toContain('Reads, in this order');
    for (const { size } of textsOf(page)) expect(size).toBeGreaterThanOrEqual(9);
    expect(wordsOf(page)).toContain("Left and right are the offense's, looking in.");
  });

  it('is in the mirror the mirrored play’s, with the same words at the same places but for the sides', () => {
    const page = playSheet(contentOf(mirrorPlay(play), { side: 'left' }));
    expect(page.marks).toHaveLength(playSheet(contentOf(play)).marks.length);
  });
});

describe('a sheet', () => {
  const play = toEnginePlay(demoPlaybook, 'lantern');

  it('tells first what the play beats most, last where not to run it', () => {
    const words = wordsOf(playSheet(contentOf(play)));
    const order = ['Scheme 3: 0.40', 'Scheme 1: 0.35', '− Scheme 2: 0.28', 'Scheme 0: 0.20'].map((part) =>
      words.indexOf(part),
    );
    expect(order.every((at) => at >= 0)).toBe(true);
    expect([...order].sort((a, b) => a - b)).toEqual(order);
  });

  it('has no names unless the coach wants them', () => {
    const men = play.spots.map(({ id }, at) => ({ spot: id, number: at, name: `Player ${at} Longname` }));
    expect(wordsOf(playSheet(contentOf(play, { men })))).toContain('Player 3');
    expect(wordsOf(playSheet(contentOf(play)))).not.toContain('Player');
  });

  it('says so when it was not played yet', () => {
    expect(wordsOf(playSheet(contentOf(play, { worths: [] })))).toContain('Not played against any scheme yet.');
  });

  it('makes room for a play of many steps, and says so when there is none', () => {
    const [first] = play.beats;
    const many = (count: number): Play => ({
      ...play,
      beats: Array.from({ length: count }, (_, at) => ({
        ...first!,
        id: `step-${at}`,
        when: at === 0 ? { kind: 'start' } : { kind: 'call', beat: `step-${at - 1}`, seconds: 1 },
      })),
    });
    expect(playSheet(contentOf(many(12))).marks.filter(({ kind }) => kind === 'picture')).toHaveLength(12);
    expect(() => playSheet(contentOf(many(60)))).toThrow(RangeError);
  });

  it('is drawn with letters under their rings, so that a PDF shows them', () => {
    const svg = pageToSvg(playSheet(contentOf(play)));
    expect(svg).not.toContain('paint-order');
    expect(svg).toContain('<title>Lantern: play sheet</title>');
    expect(svg).toMatch(/^<svg [^>]*width="612pt" height="792pt"/);
  });
});
