import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Chance, demoPlaybook, type Playbook } from '../../playbook/index.ts';
import { schemesSeenOf } from '../scout/schemes-seen.ts';
import { groupChances, schemeExpected, schemeSeen } from './chance-groups.ts';
import { compareGroups } from './compare-groups.ts';
import { drawnSeason } from './drawn-season.fixture.ts';
import { groupNumbers, looksUsed } from './group-numbers.ts';
import { planAndResult } from './plan-and-result.ts';
import { proposeGrades } from './propose-grades.ts';
import { proposeSchemes } from './propose-schemes.ts';
import { seasonPages } from './season-pages.ts';
import { priorOf } from './season-prior.ts';
import { seasonReport } from './season-report.ts';
import { brierSentence, conversionSentence, firstShotText, forecastSentence, planSentence } from './season-words.ts';

const chance = (more: Partial<Chance> = {}): Chance => ({ id: 'c', side: 'ours', result: 'goal', ...more });

/** So many goals of so many chances that have something in common. */
function chances(goals: number, of: number, more: Partial<Chance> = {}): Chance[] {
  return Array.from({ length: of }, (_, at) => chance({ ...more, id: `${at}`, result: at < goals ? 'goal' : 'saved' }));
}

const withChances = (list: readonly Chance[]): Playbook => ({ ...demoPlaybook, chances: [...list] });

describe('what is usual', () => {
  const rows = readFileSync(new URL('../../../data/ncaa-d1-men-2022-23.csv', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => /^\d/.test(line))
    .map((line) => line.split(',').map(Number) as [number, number]);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  /** Weight of a beta prior from the spread of shares, when each comes from `tries` man-ups: by moments, luck taken out. */
  const weightAt = (shares: readonly number[], tries: number): number => {
    const middle = mean(shares);
    const spread = shares.reduce((sum, share) => sum + (share - middle) ** 2, 0) / (shares.length - 1);
    const talent = spread - (middle * (1 - middle) - spread) / (tries - 1);
    return talent <= 0 ? Number.POSITIVE_INFINITY : (middle * (1 - middle)) / talent - 1;
  };

  it('comes from the teams whose figures are in the repository', () => {
    expect(rows).toHaveLength(72);
    const ours = rows.map(([offense]) => offense);
    expect(mean(ours)).toBeCloseTo(priorOf('college', 'ours').mean, 1.5);
    expect(weightAt(ours, 35)).toBeGreaterThan(priorOf('college', 'ours').weight);
    expect(weightAt(ours, 55)).toBeLessThan(priorOf('college', 'ours').weight);
    const theirs = rows.map(([, stop]) => 1 - stop);
    expect(mean(theirs)).toBeCloseTo(priorOf('college', 'theirs').mean, 1.5);
    expect(weightAt(theirs, 45)).toBeGreaterThan(priorOf('college', 'theirs').weight);
  });

  it('is called a guess where there are no data', () => {
    for (const level of ['10U', '12U', '14U', 'highSchool'] as const) {
      expect(priorOf(level, 'ours').source).toContain('no reliable data');
      expect(
        conversionSentence(groupNumbers(chances(40, 50), priorOf(level, 'ours')), priorOf(level, 'ours')),
      ).toContain('guessed');
    }
    expect(priorOf('college', 'ours').source).not.toContain('guess');
  });
});

describe('a group', () => {
  const prior = priorOf('college', 'ours');

  it('has its count, its interval and a guess between the two', () => {
    const { raw, shrunk, goals } = groupNumbers(chances(5, 9), prior);
    expect(goals).toBe(5);
    // Wilson: 5 of 9, by hand: .267 to .811.
    expect(raw.low).toBeCloseTo(0.2667, 4);
    expect(raw.high).toBeCloseTo(0.8112, 4);
    expect(shrunk.mean).toBeCloseTo((5 + 40 * 0.37) / 49, 12);
  });

  it('counts shots and times only where they are known', () => {
    const { shots, firstShot } = groupNumbers(
      [chance({ shots: 2, firstShot: 10 }), chance({ shots: 0, firstShot: 20, result: 'expired' }), chance()],
      prior,
    );
    expect(shots).toEqual({ chances: 2, shots: 2 });
    expect(firstShot).toEqual({ timed: 2, q1: 12.5, median: 15, q3: 17.5 });
    const textOf = (...times: readonly number[]) =>
      firstShotText(
        groupNumbers(
          times.map((time) => chance({ firstShot: time })),
          prior,
        ),
      );
    expect([textOf(), textOf(15), textOf(10, 20), textOf(10, 20, 30)]).toEqual([
      '–',
      '15 s (only one)',
      '15 s (only two)',
      '20 s (15 to 25)',
    ]);
    expect(groupNumbers([], prior)).toMatchObject({ goals: 0, firstShot: undefined, raw: { low: 0, high: 1 } });
  });

  it.each([
    [0, 0, 'None was written down yet.'],
    [5, 9, '5 of 9: could easily be 27 % or 81 % in the long run, so luck explains it as well as skill does.'],
    // By luck alone three of four come one time in twenty: too few to be sure.
    [4, 4, '4 of 4: could easily be 51 % or 100 % in the long run, so luck explains it as well as skill does.'],
    [0, 9, '0 of 9: could easily be 0 % or 30 % in the long run, so luck explains it as well as skill does.'],
    [30, 80, '30 of 80: in the long run between 28 % and 48 %; it cannot be told from the usual 37 %.'],
    [60, 100, '60 of 100: surely above the usual 37 %; in the long run between 50 % and 69 %.'],
    [10, 100, '10 of 100: surely below the usual 37 %; in the long run between 6 % and 17 %.'],
  ])('%d of %d is said as it is', (goals, of, sentence) => {
    expect(conversionSentence(groupNumbers(chances(goals, of), prior), prior)).toBe(sentence);
  });

  it('tells looks by what is known of them', () => {
    expect(
      looksUsed([
        chance({ look: { kind: 'feed', from: 'X', to: 'C' } }),
        chance({ look: { kind: 'feed', from: 'X', to: 'C' }, result: 'saved' }),
        chance({ look: { kind: 'shot' } }),
        chance(),
      ]),
    ).toEqual([
      { name: 'feed X to C', times: 2, goals: 1 },
      { name: 'shot', times: 1, goals: 1 },
    ]);
  });
});

describe('groups', () => {
  const list = [
    ...chances(2, 3, { call: 'lantern', scheme: 'box-zone', opponent: 'copper-falls' }),
    ...chances(0, 2, { call: 'gone', belief: { jump: 0.7, 'box-zone': 0.3 }, opponent: 'Harbor' }),
    chance({ belief: { jump: 0.5, 'box-zone': 0.5 } }),
  ];

  it.each([
    ['call', 'Lantern 3, gone 2, not written down 1'],
    ['scheme', 'Box-and-one zone 3, not written down 3'],
    ['opponent', 'Copper Falls 3, Harbor 2, not written down 1'],
    ['period', 'not written down 6'],
  ] as const)('by %s: what is gone goes by what was written', (by, words) => {
    const groups = groupChances(demoPlaybook, list, by);
    expect(groups.map(({ name, chances: members }) => `${name} ${members.length}`).join(', ')).toBe(words);
  });

  it('take a scheme that was named, and never what was only expected', () => {
    expect(schemeSeen(chance({ scheme: 'own', belief: { jump: 0.9 } }))).toBe('own');
    expect(schemeSeen(chance({ belief: { jump: 0.9 } }))).toBeUndefined();
    expect(schemeExpected(chance({ belief: { jump: 0.9, 'box-zone': 0.1 } }))).toBe('jump');
    expect(schemeExpected(chance({ belief: { jump: 0.5 } }))).toBeUndefined();
    expect(schemeExpected(chance({ scheme: 'own', belief: { jump: 0.9 } }))).toBeUndefined();
  });

  it('are compared with the others, and asked for more when there are many', () => {
    expect(compareGroups({ hits: 18, tries: 30 }, { hits: 10, tries: 30 }).verdict).toBe('better');
    expect(compareGroups({ hits: 18, tries: 30 }, { hits: 10, tries: 30 }, 10).verdict).toBe('unsure');
    expect(compareGroups({ hits: 1, tries: 40 }, { hits: 20, tries: 40 }, 10).verdict).toBe('worse');
    expect(compareGroups({ hits: 3, tries: 3 }, { hits: 0, tries: 3 }).verdict).toBe('unsure');
    expect(compareGroups({ hits: 40, tries: 40 }, { hits: 0, tries: 0 }).verdict).toBe('unsure');
  });

  it('are told apart only where luck is no likely cause: of seasons in which all calls are alike, few say otherwise', () => {
    let told = 0;
    for (let season = 1; season <= 60; season++) {
      // Calls dealt out at random to chances of one share.
      const all = chances(24, 60).map((one, at) => ({
        ...one,
        call: `c${(at * 7 + season * 13 + ((at * season * 31) % 11)) % 4}`,
      }));
      const { groups } = seasonReport(withChances(all), { by: 'call' }).ours;
      if (groups.some(({ beside }) => beside?.verdict !== 'unsure' && beside !== undefined)) told++;
    }
    // 5 in 100 of them, and three standard errors (.084) more.
    expect(told / 60).toBeLessThan(0.05 + 0.084);
  });
});

describe('plan and result', () => {
  const told = (odds: number, goals: number, of: number) =>
    chances(goals, of, { expected: { goals: odds, low: odds - 0.1, high: odds + 0.1 } });

  it('says whether what came fits what was said', () => {
    const plan = planAndResult([...told(0.25, 10, 40), ...told(0.45, 18, 40), ...chances(9, 9)])!;
    expect(plan).toMatchObject({ chances: 80, goals: 28 });
    expect(plan.expected.mean).toBeCloseTo(28, 10);
    // sd = sqrt(40 x .25 x .75 + 40 x .45 x .55) = 4.17133.
    expect(plan.expected.low).toBeCloseTo(28 - 1.959964 * 4.17133, 3);
    expect(plan.brier).toBeCloseTo((40 * 0.1875 + 40 * 0.2475) / 80, 10);
    expect(plan.bins.map(({ from, chances: count, goals }) => [from, count, goals])).toEqual([
      [0.2, 40, 10],
      [0.4, 40, 18],
    ]);
    expect(planSentence(plan)).toContain('that fits');
    expect(forecastSentence(plan)).toContain('cannot be told yet');
    expect(brierSentence(plan)).toMatch(/^For those who want it: Brier score 0\.21\d/);
    const clear = planAndResult([...told(0.1, 2, 40), ...told(0.9, 37, 40)])!;
    expect(forecastSentence(clear)).toContain('surely tells better chances');
    const wrong = planAndResult([...told(0.1, 36, 40), ...told(0.9, 4, 40)])!;
    expect(forecastSentence(wrong)).toContain('misleads');
  });

  it('says so when it does not fit, and when there is too little', () => {
    expect(planSentence(planAndResult(told(0.6, 2, 30)))).toContain('it expects too much');
    expect(planSentence(planAndResult(told(0.1, 20, 30)))).toContain('it expects too little');
    expect(planSentence(planAndResult(told(0.3, 1, 3)))).toContain('too few');
    expect(
      planAndResult([chance(), chance({ side: 'theirs', expected: { goals: 1, low: 1, high: 1 } })]),
    ).toBeUndefined();
    expect(planSentence(undefined)).toContain('No chance has a forecast');
  });
});

describe('proposals', () => {
  const edited = (playbook: Playbook): Playbook =>
    proposeSchemes(playbook).reduce((now, { edit }) => {
      const result = edit?.(now);
      return result?.kind === 'edited' ? result.playbook : now;
    }, playbook);
  const weightsOf = (playbook: Playbook) => {
    const weights = playbook.opponents!.find(({ id }) => id === 'copper-falls')!.schemes!;
    const sum = Object.values(weights).reduce((all, weight) => all + weight, 0);
    return Object.fromEntries(Object.entries(weights).map(([id, weight]) => [id, weight / sum]));
  };
  const seen = [
    ...chances(1, 3, { opponent: 'copper-falls', scheme: 'jump' }),
    ...chances(1, 1, { opponent: 'copper-falls', scheme: 'box-zone' }),
  ];

  it('move the weights of an opponent by what was seen, once', () => {
    const accepted = edited(withChances(seen));
    // Box 3 to string 1, worth 4, and 1 and 0 and 3 jumps: 4, 1, 3 of 8.
    expect(proposeSchemes(withChances(seen))[0]!.says).toMatch(/seen in \S.* 3 times, \S.* once\. /);
    expect(weightsOf(accepted)).toEqual({ 'box-zone': 0.5, 'box-string': 0.125, jump: 0.375 });
    expect(proposeSchemes(accepted)).toEqual([]);
  });

  it('come to the same after each game and at the end of the season', () => {
    const first = edited(withChances(seen.slice(0, 2)));
    const both = edited({ ...first, chances: seen });
    const atOnce = weightsOf(edited(withChances(seen)));
    for (const [id, share] of Object.entries(weightsOf(both))) expect(share).toBeCloseTo(atOnce[id]!, 3);
  });

  // A game from the bench in which nobody named a scheme: each man-up keeps what was expected before it.
  it('do not take what was expected for what was seen', () => {
    const expected = chances(2, 6, { opponent: 'copper-falls', belief: { 'box-zone': 0.75, jump: 0.25 } });
    expect(proposeSchemes(withChances(expected))).toEqual([]);
    expect(schemesSeenOf(withChances(expected), 'copper-falls')).toEqual([]);
  });

  it('say so where schemes are named mostly for goals', () => {
    const met = { opponent: 'copper-falls' };
    const uneven = [...chances(9, 9, { ...met, scheme: 'jump' }), ...chances(0, 20, met)];
    expect(proposeSchemes(withChances(uneven))[0]!.says).toContain(
      'written down for 9 of 9 goals and for 0 of 20 chances without one',
    );
    expect(proposeSchemes(withChances(seen))[0]!.says).not.toContain('But');
  });

  it('name no scheme that the playbook does not know, and none that defended against nobody of ours', () => {
    expect(proposeSchemes(withChances(chances(1, 5, { opponent: 'copper-falls', scheme: 'gone' })))).toEqual([]);
    expect(
      proposeSchemes(withChances(chances(1, 5, { opponent: 'copper-falls', scheme: 'jump', side: 'theirs' }))),
    ).toEqual([]);
  });

  const [one, other] = demoPlaybook.team.roster
    .filter(({ crosse }) => crosse !== 'goalkeeper')
    .map(({ number }) => number);

  it('move a grade only when it can be told, and only once', () => {
    const plain = {
      ...demoPlaybook,
      team: {
        ...demoPlaybook.team,
        roster: demoPlaybook.team.roster.map(({ measured: _, grades: __, ...man }) => man),
      },
    };
    const unsure = { ...plain, chances: [...chances(5, 10, { scorer: one! }), ...chances(5, 12, { scorer: other! })] };
    expect(proposeGrades(unsure).map(({ edit }) => edit)).toEqual([undefined, undefined]);
    expect(proposeGrades(unsure)[0]!.says).toContain('cannot be told');
    const sure = { ...plain, chances: [...chances(19, 20, { scorer: one! }), ...chances(3, 20, { scorer: other! })] };
    const [better, worse] = proposeGrades(sure);
    expect([better!.changes, worse!.changes]).toEqual([
      ['shooting: grade 3 becomes 4'],
      ['shooting: grade 3 becomes 2'],
    ]);
    const accepted = better!.edit!(sure);
    if (accepted.kind === 'refused') throw new Error(accepted.reason);
    expect(accepted.playbook.team.roster.find(({ number }) => number === one)?.grades?.shoot).toBe(4);
    expect(proposeGrades(accepted.playbook)[0]!.edit).toBeUndefined();
  });

  describe('of shooters, where the table names them', () => {
    const named = (goals: number, misses: number, more: Partial<Chance>) => chances(goals, goals + misses, more);
    const says = (list: readonly Chance[]) => proposeGrades(withChances(list)).map((each) => each.says);

    // A coach's table: who scored stands there, who missed does not.
    it('on goals only, conclude nothing of anybody and say why', () => {
      const list = [...named(8, 0, { scorer: one! }), ...named(14, 0, { scorer: other! }), ...named(0, 25, {})];
      const proposals = proposeGrades(withChances(list));
      expect(proposals).toMatchObject([{ title: 'Shooters', changes: [], edit: undefined }]);
      expect(proposals[0]!.says).toContain('named for 22 of 22 goals and for 0 of 25 last shots that missed');
      expect(proposals[0]!.says).not.toContain('best guess');
    });

    it('on some misses too, but far fewer, do the same', () => {
      const list = [...named(19, 1, { scorer: one! }), ...named(3, 5, { scorer: other! }), ...named(0, 25, {})];
      expect(says(list)).toEqual([expect.stringContaining('for 6 of 31 last shots that missed')]);
    });

    it('but misses are left out of the table, say so', () => {
      expect(says([...named(8, 0, { scorer: one! }), ...named(14, 0, { scorer: other! })])).toEqual([
        expect.stringContaining('Of 22 last shots written down 22 are goals: misses seem to be left out.'),
      ]);
    });

    it('on most shots, conclude only what holds whoever took the others', () => {
      const plain = demoPlaybook.team.roster.map(({ measured: _, grades: __, ...man }) => man);
      const of = (list: readonly Chance[]) =>
        proposeGrades({ ...withChances(list), team: { ...demoPlaybook.team, roster: plain } })[0]!;
      const full = [...named(13, 7, { scorer: one! }), ...named(10, 30, { scorer: other! })];
      expect(of(full).changes).toHaveLength(1);
      const some = of([...full, ...named(4, 5, {})]);
      expect(some.changes).toEqual([]);
      expect(some.says).toContain('Of 9 last shots more nobody wrote down whose they were.');
      // Few that are missing cannot turn it.
      expect(of([...full, ...named(1, 1, {})]).changes).toHaveLength(1);
    });
  });

  it('ask for more shots than a few', () => {
    expect(proposeGrades(withChances(chances(5, 5, { scorer: one! })))).toEqual([]);
  });
});

describe('the season', () => {
  const season = drawnSeason();

  it('adds up: each man-up is in one group of its side', () => {
    for (const by of ['call', 'scheme', 'unit', 'opponent', 'side', 'period'] as const) {
      const { ours, theirs } = seasonReport(season, { by });
      expect(ours.all.chances + theirs.all.chances).toBe(200);
      for (const { groups, all } of [ours, theirs]) {
        expect(groups.reduce((sum, { numbers }) => sum + numbers.chances, 0)).toBe(all.chances);
        expect(groups.reduce((sum, { numbers }) => sum + numbers.goals, 0)).toBe(all.goals);
      }
    }
  });

  it('finds the call that was made the better one', () => {
    const { groups } = seasonReport(season, { by: 'call' }).ours;
    expect(groups.filter(({ beside }) => beside?.verdict === 'better').map(({ key }) => key)).toEqual(['lantern']);
  });

  it('counts man-ups apart from the chances in them, and holds the man-ups against what is usual', () => {
    const penalty = { seconds: 120, fixed: true };
    const at = { date: '2026-03-14', opponent: 'copper-falls', period: 2, penalty };
    const list = [
      chance({ ...at, id: 'a', clock: 500, start: 'restart', result: 'saved' }),
      chance({ ...at, id: 'b', clock: 470, start: 'transition', result: 'goal' }),
      chance({ ...at, id: 'c', clock: 430, start: 'transition', result: 'turnover' }),
    ];
    const { ours } = seasonReport(withChances(list), { by: 'call' });
    expect(ours.manUps).toMatchObject({ manUps: 1, scored: 1, alone: 0 });
    expect(ours.says).toBe(
      '3 chances in 1 man-up. Man-ups with a goal, 1 of 1: could easily be 21 % or 100 % in the long run, so luck explains it as well as skill does.',
    );
    expect(ours.prior.mean).toBeCloseTo(ours.usual.mean / 3, 12);
    expect(ours.prior.source).toContain('A man-up here has 3.00 chances');
  });

  it('compares nothing by what was written down only when it worked', () => {
    const list = [...chances(10, 10, { call: 'lantern' }), ...chances(6, 8, { call: 'quarry' }), ...chances(0, 30)];
    const { told, groups } = seasonReport(withChances(list), { by: 'call' }).ours;
    expect(told).toEqual([expect.stringContaining('Call is written down for 16 of 16 goals and for 2 of 32 chances')]);
    expect(groups.every(({ beside }) => beside === undefined)).toBe(true);
  });

  it('does not hold a group against those of which nothing is known', () => {
    const list = [...chances(9, 12, { call: 'lantern' }), ...chances(2, 20)];
    expect(seasonReport(withChances(list), { by: 'call' }).ours.told[0]).not.toContain('surely');
  });

  it('says how often looks score only where they are written down of misses too', () => {
    const look = { kind: 'feed' as const, from: 'X', to: 'C' };
    const full = seasonReport(withChances([...chances(4, 10, { look })]), { by: 'call' }).ours;
    expect(full.looksSay).toBe('Looks that were taken most, and the goals from them: feed X to C: 4 of 10.');
    const goalsOnly = seasonReport(withChances([...chances(8, 8, { look }), ...chances(0, 20)]), { by: 'call' }).ours;
    expect(goalsOnly.looksSay).toBe(
      'Goals by look: feed X to C: 8. How often each look scores cannot be told: looks are written down for 8 of 8 goals and for 0 of 20 shots that missed.',
    );
  });

  it('of one opponent has only his', () => {
    const { ours, theirs } = seasonReport(season, { by: 'opponent', opponent: 'northgate' });
    expect(ours.groups.map(({ name }) => name)).toEqual(['Northgate Ospreys']);
    const all = season.chances!.filter(({ opponent }) => opponent === 'northgate').length;
    expect(ours.all.chances + theirs.all.chances).toBe(all);
  });

  it.each(['letter', 'a4'] as const)('stands on %s pages, with nothing outside of them', (paper) => {
    const { pages } = seasonPages(season, { paper, made: '30 November 2026' });
    expect(pages.length).toBe(2);
    const words = pages
      .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
      .join(' ');
    for (const part of ['Lantern brings surely more goals', 'By opponent', 'no reliable data', 'Their chances'])
      expect(words).toContain(part);
    for (const { marks, width, height } of pages)
      for (const mark of marks) {
        const at =
          mark.kind === 'text'
            ? mark.at
            : mark.kind === 'rule'
              ? mark.to
              : { x: mark.left + mark.width, y: mark.top + mark.height };
        expect(at.x).toBeLessThanOrEqual(width - 30);
        expect(at.y).toBeLessThanOrEqual(height - 30);
      }
  });

  it('of nothing says so', () => {
    const { ours, planSays } = seasonReport(demoPlaybook, { by: 'call' });
    expect(ours.says).toBe('None was written down yet.');
    expect(planSays).toContain('No chance has a forecast');
    expect(seasonPages(demoPlaybook, { paper: 'letter', made: '' }).pages).toHaveLength(1);
  });
});
