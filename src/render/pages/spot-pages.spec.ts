import { describe, expect, it } from 'vitest';
import { mirrorPlay, type Play } from '../../engine/index.ts';
import { demoPlaybook, toEnginePlay } from '../../playbook/index.ts';
import type { Page, PagePicture } from './page.ts';
import { pageToSvg } from './page-svg.ts';
import { contentOf, expectReadable, longPlay, textsOf, wordsOf } from './sheet-content.fixture.ts';
import { spotMoves } from './spot-moves.ts';
import { spotPages } from './spot-pages.ts';

const pagesFor = (pages: readonly Page[], play: Play, spot: string): readonly Page[] =>
  pages.filter(({ title }) => title === `${play.name}: ${spot}` || title.startsWith(`${play.name}: ${spot}, page`));
const picturesOf = ({ marks }: Page): readonly PagePicture[] => marks.filter((mark) => mark.kind === 'picture');

describe.each(demoPlaybook.plays.map(({ id }) => id))('the pages for the men of %s', (id) => {
  const play = toEnginePlay(demoPlaybook, id);
  const pages = spotPages(contentOf(play));

  it.each(['letter', 'a4'] as const)(
    'are to be read from a wall, inside the margins, no line on another (%s)',
    (paper) => {
      for (const page of spotPages(contentOf(play, { paper }), 98)) expectReadable(page, 11);
    },
  );

  it('are one for each man, or two, with his spot in the largest letters and his number', () => {
    for (const [at, { id: spot }] of play.spots.entries()) {
      const own = pagesFor(pages, play, spot);
      expect(own.length, spot).toBeGreaterThanOrEqual(1);
      expect(own.length, spot).toBeLessThanOrEqual(2);
      const largest = textsOf(own[0]!).reduce((one, other) => (other.size > one.size ? other : one));
      expect(largest.text).toBe(spot);
      expect(wordsOf(own[0]!)).toContain(`Number ${at + 10}`);
    }
    expect(play.spots.flatMap(({ id: spot }) => pagesFor(pages, play, spot))).toHaveLength(pages.length);
  });

  it('show his home and each step in which he has something to do', () => {
    for (const { id: spot } of play.spots) {
      const own = pagesFor(pages, play, spot);
      const moves = spotMoves(play, spot);
      expect(own.flatMap(picturesOf), spot).toHaveLength(1 + moves.length);
      for (const { number } of moves) expect(own.map(wordsOf).join(' ')).toContain(`move (step ${number})`);
    }
  });

  it('count his own reads, and nobody else’s', () => {
    for (const { id: spot } of play.spots) {
      const marks = pagesFor(pages, play, spot).flatMap(textsOf);
      const counted = marks
        .filter(({ text, weight }) => weight === 'bold' && /^\d+$/.test(text))
        .map(({ text }) => text);
      const reads = play.reads.filter(({ carrier }) => carrier === spot);
      expect(counted, spot).toEqual(reads.map((_, at) => String(at + 1)));
    }
  });

  it('say what he does when the ball is lost, when the penalty ends, and from which day the page is', () => {
    const duty = { backUp: 'end line behind the goal', getBack: 'sprint toward midfield', none: 'Ride' };
    for (const { id: spot, safety } of play.spots) {
      const words = pagesFor(pages, play, spot).map(wordsOf).join(' ');
      expect(words).toContain(duty[safety]);
      expect(words).toContain('The penalty ends');
      expect(words).toContain('1 March 2026, version abc123');
      expect(words).toContain("Left and right are the offense's");
      expect(words.includes('Last ten seconds')).toBe(play.lastTen !== undefined);
    }
  });

  it('draw what he does in full, and what others do pale', () => {
    for (const { id: spot } of play.spots) {
      const moves = spotMoves(play, spot);
      for (const [at, picture] of pagesFor(pages, play, spot).flatMap(picturesOf).slice(1).entries()) {
        const letters = (items: typeof picture.faded): readonly string[] =>
          items.flatMap((item) => (item.kind === 'text' && item.style.endsWith('erText') ? [item.text] : []));
        expect(letters(picture.scene.items), `${spot} ${at}`).toEqual([spot]);
        expect(letters(picture.faded)).toHaveLength(play.spots.length - 1);
        const shots = moves[at]!.own.some(({ kind }) => kind === 'shot');
        expect(picture.scene.items.some(({ style }) => style === 'shot')).toBe(shots);
        const passes = moves[at]!.from.length > 0 || moves[at]!.own.some(({ kind }) => kind === 'pass');
        expect(picture.scene.items.some(({ style }) => style === 'pass')).toBe(passes);
      }
    }
  });

  it('are in the mirror as many', () => {
    expect(spotPages(contentOf(mirrorPlay(play), { side: 'left' }))).toHaveLength(pages.length);
  });
});

describe('a man’s page', () => {
  const play = toEnginePlay(demoPlaybook, 'lantern');

  it('says his name only where the coach wants it', () => {
    const men = play.spots.map(({ id }, at) => ({ spot: id, number: at, name: `Player ${at} Longname` }));
    expect(wordsOf(spotPages(contentOf(play, { men }))[0]!)).toContain('Number 0, Player 0');
    expect(spotPages(contentOf(play)).map(wordsOf).join(' ')).not.toContain('Player');
  });

  it('goes on on another page where he has very much to do, and loses nothing', () => {
    const pages = spotPages(contentOf(longPlay(play, 40), { paper: 'a4' }), 7);
    const own = pagesFor(pages, play, 'TR');
    expect(own.length).toBeGreaterThan(2);
    for (const page of pages) expectReadable(page, 11);
    const words = own.map(wordsOf).join(' ');
    for (let step = 1; step <= 40; step++) expect(words).toContain(`(step ${step})`);
    expect(words).toContain('The penalty ends');
  });

  it('holds names as long as a playbook allows', () => {
    const name = 'Wwwwwwwwww '.repeat(7).trim();
    const men = play.spots.map(({ id }) => ({ spot: id, number: 999, name }));
    for (const page of spotPages(contentOf({ ...play, name }, { men, team: name }))) expectReadable(page, 11);
  });

  it('tells a man without a step to hold his place', () => {
    const idle: Play = { ...play, beats: play.beats.slice(0, 1), reads: [], lastTen: { beats: [], reads: [] } };
    const words = wordsOf(pagesFor(spotPages(contentOf(idle)), play, 'C')[0]!);
    expect(words).toContain('No step asks anything of you: hold your place');
    expect(words).toContain('No read of your own');
  });

  it('is drawn with the others behind one pale group', () => {
    const svg = pageToSvg(spotPages(contentOf(play))[0]!);
    expect(svg.match(/<g opacity="0.45">/g)).toHaveLength(1 + spotMoves(play, 'TR').length);
  });
});
