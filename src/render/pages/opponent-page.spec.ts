import { describe, expect, it } from 'vitest';
import { disciplineNames, schemeList } from '../../engine/index.ts';
import { demoPlaybook, ruleCodeOf, toEnginePlay } from '../../playbook/index.ts';
import { drawnField } from '../field-scene.ts';
import { type MetScheme, type OpponentContent, opponentPage } from './opponent-page.ts';
import { pageToSvg } from './page-svg.ts';
import { expectReadable, wordsOf } from './sheet-content.fixture.ts';

const play = toEnginePlay(demoPlaybook, 'lantern');
const goals = (mean: number) => ({ mean, low: mean - 0.02, high: mean + 0.02 });

const schemes: readonly MetScheme[] = schemeList
  .filter(({ defenders }) => defenders === 5)
  .map(({ notes, names, home }, at, all) => ({
    name: notes.name,
    share: 1 / all.length,
    open: `Open: ${notes.leaves}`,
    men: names.map((name, man) => ({
      name,
      home: { x: home[2 * man]!, y: home[2 * man + 1]! },
      discipline: disciplineNames[man === at % 5 ? 3 : 1]!,
    })),
  }));

function contentOf(known: number, plays: number, more: Partial<OpponentContent> = {}): OpponentContent {
  return {
    opponent: 'Copper Falls',
    team: demoPlaybook.team.name,
    side: 'right',
    field: drawnField(ruleCodeOf(demoPlaybook).markings),
    schemes: schemes.slice(0, known),
    plays: Array.from({ length: plays }, (_, at) => ({
      play,
      set: '2-3-1',
      number: at + 1,
      goals: goals(0.4 - 0.03 * at),
      byScheme: schemes.slice(0, known).map((_, scheme) => goals(0.2 + 0.01 * scheme)),
    })),
    trials: 500,
    notes: '',
    date: '1 March 2026',
    paper: 'letter',
    ...more,
  };
}

/** Half the height of letters with their halo, yd. */
const lettersHigh = 0.75;

describe('the page of an opponent', () => {
  it.each([
    [0, 0],
    [1, 1],
    [2, 3],
    [3, 6],
    [9, 40],
  ])('of %i schemes, with %i plays, stands inside the margins and can be read', (known, plays) => {
    for (const paper of ['letter', 'a4'] as const) {
      const notes = 'They chase behind the goal and talk all the time. '.repeat(12);
      expectReadable(opponentPage(contentOf(known, plays, { paper })), 10);
      expectReadable(opponentPage(contentOf(known, plays, { paper, notes }), 12), 10);
    }
  });

  it('rings who is late in each scheme, and says who it is in the first', () => {
    const [one, two] = schemes;
    expect(wordsOf(opponentPage(contentOf(1, 1)))).toContain(`${one!.men[0]!.name.toUpperCase()}, in the ring`);
    const rings = (known: number): number =>
      pageToSvg(opponentPage(contentOf(known, 1))).match(/class="readRing"|stroke-dasharray="3 5"/g)?.length ?? 0;
    expect(rings(2)).toBe(2 * rings(1));
    expect(two).toBeDefined();
  });

  it('has room in its pictures for every man with his ring and his letters', () => {
    // A man far down on a side: his letters are lower than anything else.
    const [first] = schemes;
    const far = { ...first!, men: first!.men.map((man, at) => (at === 0 ? { ...man, home: { x: 9, y: 13.2 } } : man)) };
    for (const scheme of [...schemes, far]) {
      const { marks } = opponentPage(contentOf(1, 1, { schemes: [scheme] }));
      const [picture] = marks.filter((mark) => mark.kind === 'picture');
      const { view } = picture!.scene;
      for (const { home } of scheme.men) {
        expect(view.top + view.height, scheme.name).toBeGreaterThan(home.y + 1.95 + lettersHigh);
        expect(view.top, scheme.name).toBeLessThan(home.y - 1.25);
        expect(view.width / 2, scheme.name).toBeGreaterThan(Math.abs(home.x) + 1.25);
      }
    }
  });

  it('draws the schemes as high as one another', () => {
    const { marks } = opponentPage(contentOf(3, 1));
    const heights = marks.flatMap((mark) => (mark.kind === 'picture' ? [mark.height] : []));
    expect(heights).toHaveLength(3);
    expect(new Set(heights).size).toBe(1);
  });

  it('calls its unit as the screens do', () => {
    const page = opponentPage(contentOf(2, 3));
    expect(wordsOf(page)).toContain('Goals a chance');
    expect(`${wordsOf(page)} ${page.description}`).not.toContain('oals a man-up');
  });

  it('says that all are alike where nobody is later than the others', () => {
    const alike = schemes.slice(0, 1).map((scheme) => ({
      ...scheme,
      men: scheme.men.map((man) => ({ ...man, discipline: 'ordinary' as const })),
    }));
    expect(wordsOf(opponentPage(contentOf(1, 1, { schemes: alike })))).toContain('All of them alike');
  });

  it('names of what they really play the scheme that a play makes most against', () => {
    const seldom = schemes.slice(0, 3).map((scheme, at) => ({ ...scheme, share: [0.88, 0.1, 0.02][at]! }));
    const most = (shares: readonly MetScheme[]): string => {
      const words = wordsOf(opponentPage(contentOf(3, 1, { schemes: shares })));
      // The third makes 0.22, the second 0.21, the first 0.20.
      return ['0.22', '0.21', '0.20'].filter((goals) => words.includes(`${goals} If`)).join();
    };
    expect(most(seldom)).toBe('0.21');
    expect(most(seldom.map((scheme) => ({ ...scheme, share: 1 / 3 })))).toBe('0.22');
    expect(most(seldom.map((scheme, at) => ({ ...scheme, share: 0.09 - at / 100 })))).toBe('0.20');
  });

  it('says which play is surely the best, and which may be', () => {
    expect(wordsOf(opponentPage(contentOf(1, 2)))).toContain('Lantern may be as good, so mix them');
    const [first, second] = contentOf(1, 2).plays;
    const apart = contentOf(1, 2, { plays: [first!, { ...second!, goals: goals(0.1) }] });
    expect(wordsOf(opponentPage(apart))).toContain('Lantern first: the others make less for sure.');
  });
});
