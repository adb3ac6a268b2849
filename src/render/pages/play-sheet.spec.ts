import { describe, expect, it, test } from 'vitest';
import { mirrorPlay } from '../../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import { playSteps } from '../play-steps.ts';
import { papers } from './page.ts';
import { pageToSvg } from './page-svg.ts';
import { playSheet } from './play-sheet.ts';
import { contentOf, expectReadable, longPlay, wordsOf } from './sheet-content.fixture.ts';

describe.each(demoPlaybook.plays.map(({ id }) => id))('the sheet of %s', (id) => {
  const play = toEnginePlay(demoPlaybook, id);
  it.each(['letter', 'a4'] as const)('stands inside the margins of the paper, and can be read (%s)', (paper) => {
    const page = playSheet(contentOf(play, { paper }));
    const { width, height } = papers[paper];
    expect([page.width, page.height]).toEqual([width, height]);
    expectReadable(page, 9);
    expectReadable(playSheet(contentOf(play, { paper }), 214), 9);
  });

  it('has a picture for each step, and words for each', () => {
    const page = playSheet(contentOf(play));
    expect(page.marks.filter(({ kind }) => kind === 'picture')).toHaveLength(playSteps(play).length);
    for (const { beat } of playSteps(play)) {
      for (const { by } of beat.actions) expect(wordsOf(page)).toContain(by);
    }
  });

  it('says each man’s job and number, the reads, and whose left and right it is', () => {
    const page = playSheet(contentOf(play));
    for (const { number } of contentOf(play).men) expect(wordsOf(page)).toContain(String(number));
    expect(wordsOf(page)).toContain('Reads, in this order');
    expect(wordsOf(page)).toContain("Left and right are the offense's, looking in.");
  });

  it('is in the mirror the mirrored play’s, with the same words at the same places but for the sides', () => {
    const page = playSheet(contentOf(mirrorPlay(play), { side: 'left' }));
    expect(page.marks).toHaveLength(playSheet(contentOf(play)).marks.length);
  });
});

test('a step that another begins is told by the number that stands on the page', () => {
  const words = wordsOf(playSheet(contentOf(toEnginePlay(demoPlaybook, 'quarry'))));
  expect(words).toContain('0.8 s after step 3 begins');
  expect(words).not.toContain('"curl"');
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
    expect(playSheet(contentOf(longPlay(play, 12))).marks.filter(({ kind }) => kind === 'picture')).toHaveLength(12);
    expect(() => playSheet(contentOf(longPlay(play, 60)))).toThrow(RangeError);
  });

  it('is drawn with letters under their rings, so that a PDF shows them', () => {
    const svg = pageToSvg(playSheet(contentOf(play)));
    expect(svg).not.toContain('paint-order');
    expect(svg).toContain('<title>Lantern: play sheet</title>');
    expect(svg).toMatch(/^<svg [^>]*width="612pt" height="792pt"/);
  });
});
