import { describe, expect, it } from 'vitest';
import { compileChance } from '../chance/model.ts';
import { recordTrace } from '../chance/run.ts';
import { sampleMatchup, samplePlay } from '../chance/sample-matchup.fixture.ts';
import { disciplines } from '../defense/discipline.ts';
import { type SchemeId, schemes, schemesFor } from '../defense/schemes.ts';
import { type BeliefQuestion, believeSchemes } from './believe.ts';
import { defaultFilmReading } from './film-odds.ts';
import type { MarkedFilm, MarkedMoment } from './marked-film.ts';
import { signTableOf } from './sign-table.ts';
import { suspectsOf } from './suspects.ts';

const reading = { ...defaultFilmReading, takes: 6 };
const asked = (ids: readonly SchemeId[]) => ids.map((id) => ({ scheme: schemes[id], weight: 1 }));

/** Moments of a trial without any error, each a touch later than the ball came. */
function filmOf(scheme: SchemeId, trial = 0): MarkedFilm {
  const model = compileChance(sampleMatchup({ scheme: schemes[scheme], discipline: disciplines.sharp }), 11);
  const trace = recordTrace(model, trial);
  const moments: MarkedMoment[] = [];
  for (let frame = 100, held = 0; frame < trace.frames && moments.length < 5; frame++) {
    const holder = trace.holder_byFrame[frame]!;
    held = holder >= 0 && holder < 6 && holder === trace.holder_byFrame[frame - 1] ? held + 1 : 0;
    if (held !== 12) continue;
    const place = (agent: number) => {
      const at = 2 * (frame * trace.agents + agent);
      return { x: trace.places_byFrame[at]!, y: trace.places_byFrame[at + 1]! };
    };
    const all = [...Array(11).keys()].map(place);
    moments.push({
      time: frame * trace.step,
      ball: holder,
      offense: all.slice(0, 6),
      defenders: all.slice(6).reverse(),
    });
  }
  return { spots: samplePlay.spots.map(({ at }) => at), moments };
}

function belief(film: MarkedFilm, ids: readonly SchemeId[], more: Partial<BeliefQuestion> = {}) {
  return believeSchemes({ schemes: asked(ids), level: 'college', manUps: [{ film }], reading, ...more });
}

const some = ['box-zone', 'five-man-rotation', 'diamond-and-one', 'house-3-2'] as const;

describe('which scheme it is', () => {
  it.each(some)('tells %s from three others by two man-ups that were marked without error', (scheme) => {
    const manUps = [0, 1].map((trial) => ({ film: filmOf(scheme, trial) }));
    const found = believeSchemes({ schemes: asked(some), level: 'college', manUps, reading });
    expect(found.schemes.find((one) => one.scheme === scheme)!.share).toBeGreaterThan(0.8);
    expect(found.schemes.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });

  it('finds whom a shutoff shuts off', () => {
    const film = filmOf('shutoff');
    const [, shutoff] = belief(film, ['box-zone', 'shutoff']).schemes;
    // The fixture names the first spot.
    expect(shutoff!.stars.indexOf(Math.max(...shutoff!.stars))).toBe(0);
    expect(shutoff!.stars.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12);
  });

  it('is the same in whatever order men are marked, and for the same film twice', () => {
    const film = filmOf('box-zone');
    const turned = {
      ...film,
      moments: film.moments.map((one) => ({ ...one, defenders: [...one.defenders].reverse() })),
    };
    const shares = (one: MarkedFilm) => belief(one, some).schemes.map(({ share }) => share);
    shares(turned).forEach((share, at) => {
      expect(share).toBeCloseTo(shares(film)[at]!, 9);
    });
  });

  it('holds with two men missing and a mark too many in every moment', () => {
    const film = filmOf('house-3-2');
    const poor = {
      ...film,
      moments: film.moments.map((one) => ({ ...one, defenders: [...one.defenders.slice(2), { x: 14, y: 16 }] })),
    };
    expect(belief(poor, some).schemes[3]!.share).toBeGreaterThan(0.6);
  });

  it('is not overturned by one mark that is yards off', () => {
    const film = filmOf('diamond-and-one');
    const [first, ...rest] = film.moments;
    const wrong = {
      ...film,
      moments: [{ ...first!, defenders: [{ x: -9, y: 1 }, ...first!.defenders.slice(1)] }, ...rest],
    };
    const share = (one: MarkedFilm) => belief(one, some).schemes[2]!.share;
    expect(share(wrong)).toBeGreaterThan(share(film) / 3);
  });

  it('lets no moment count for more than its doubt allows, however sure its marks are', () => {
    const film = filmOf('box-zone');
    const one = { ...film, moments: film.moments.slice(0, 1) };
    const [first, ...others] = belief(one, some).moments[0]!.odds_byScheme;
    expect(first).toBeGreaterThan(0);
    expect(Math.min(first!, ...others)).toBeGreaterThanOrEqual(reading.doubt);
  });

  it('is what it was before when nothing was seen, or nobody marked', () => {
    const none = believeSchemes({
      schemes: [
        { scheme: schemes['box-zone'], weight: 3 },
        { scheme: schemes.jump, weight: 1 },
      ],
      level: '14U',
    });
    expect(none.schemes.map(({ share }) => share)).toEqual([0.75, 0.25]);
    const film = filmOf('box-zone');
    const blind = { ...film, moments: film.moments.map((one) => ({ ...one, defenders: [] })) };
    belief(blind, some).schemes.forEach(({ share }) => {
      expect(share).toBeCloseTo(0.25, 9);
    });
  });

  it('tells which schemes stand alike: a string with nobody odd on top stays in, and is a box-and-one', () => {
    const film = filmOf('box-zone');
    const low = { spots: film.spots.map(({ x }) => ({ x, y: 4 })), moments: [{ time: 1, ball: 1, defenders: [] }] };
    expect(belief(low, ['box-zone', 'box-string']).alike).toHaveLength(1);
    expect(belief(filmOf('five-man-rotation'), ['box-zone', 'five-man-rotation']).alike).toEqual([]);
  });

  it('rules out what has no weight, whatever is seen', () => {
    const weighed = asked(some).map((one, at) => ({ ...one, weight: at === 0 ? 0 : 1 }));
    expect(
      believeSchemes({ schemes: weighed, level: 'college', manUps: [{ film: filmOf('box-zone') }], reading })
        .schemes[0]!.share,
    ).toBe(0);
  });

  // Three man-ups, one of another scheme: pooled, the odd one was believed to be of the scheme of the two.
  it('takes a team that mixes for one that mixes, and reads each man-up by itself', () => {
    const films = [filmOf('box-zone', 0), filmOf('box-zone', 1), filmOf('diamond-and-one', 0)];
    const manUps = films.map((film) => ({ film }));
    const found = believeSchemes({ schemes: asked(some), level: 'college', manUps, reading });
    const likeliest = found.manUps.map(({ share_byScheme }) => share_byScheme.indexOf(Math.max(...share_byScheme)));
    expect(likeliest).toEqual([0, 0, 2]);
    expect(found.oneScheme).toBeLessThan(0.3);
    expect(found.schemes[2]!.share).toBeGreaterThan(0.15);
    expect(found.schemes[0]!.share).toBeGreaterThan(found.schemes[2]!.share);
    // What speaks for the diamond is told of the man-up that is one.
    expect(
      found.reasons
        .filter(({ film }) => film === 2)
        .every(({ speaksFor, against }) => [speaksFor, against].includes(2)),
    ).toBe(true);
  });

  it('tells what a man-up looks like whatever was believed before', () => {
    const film = filmOf('house-3-2');
    const raised = asked(some).map((one, at) => ({ ...one, weight: at === 0 ? 1000 : 1 }));
    const alone = (schemesAsked: BeliefQuestion['schemes']) =>
      believeSchemes({ schemes: schemesAsked, level: 'college', manUps: [{ film }], reading }).manUps[0]!
        .alone_byScheme;
    expect(alone(raised)).toEqual(alone(asked(some)));
  });

  it('says why: the marks that speak most for the likeliest against the next, and who is meant', () => {
    const { reasons, between, schemes: found } = belief(filmOf('house-3-2'), some);
    const [reason] = reasons;
    expect(found[between[0]]!.scheme).toBe('house-3-2');
    expect(reason).toMatchObject({ speaksFor: between[0], against: between[1] });
    expect(reason!.odds).toBeGreaterThan(2);
    expect(reason!.man.away).toBeLessThan(reason!.instead.away);
  });
});

describe('Bayes', () => {
  // Log-odds add up: log O1 = log O0 + sum of log L1 / L0 (any textbook).
  it('adds log-odds of ticks to those of before, an eye that is mistaken once in ten giving 9 to 1', () => {
    const ids = ['box-zone', 'jump'] as const;
    const suspects = suspectsOf(asked(ids), 'college');
    const seen_bySign = [suspects.map(({ of }) => [of === 0 ? 1 : 0])];
    const walked = { movement: 'reverse', takes: 1, signs: ['one-in-front'], seen_bySign } as const;
    const table = signTableOf([walked], suspects);
    const then = (seen: boolean) =>
      believeSchemes({
        schemes: [
          { scheme: schemes['box-zone'], weight: 1 },
          { scheme: schemes.jump, weight: 3 },
        ],
        level: 'college',
        signs: table,
        manUps: [{ ticks: [{ sign: 'one-in-front', seen }] }],
      }).manUps[0]!.share_byScheme[0]!;
    expect(then(true) / (1 - then(true))).toBeCloseTo((1 / 3) * 9, 9);
    expect(then(false) / (1 - then(false))).toBeCloseTo(1 / 3 / 9, 9);
    const { tickReasons } = believeSchemes({
      schemes: asked(ids),
      level: 'college',
      signs: table,
      manUps: [{ ticks: [{ sign: 'one-in-front', seen: false }] }],
    });
    expect(tickReasons).toEqual([{ manUp: 0, tick: 0, speaksFor: 1, against: 0, odds: expect.closeTo(9, 9) }]);
  });

  // SPRT of Wald 1947: bounds log((1 - b) / a), for a = b = .05 at 2.944439. Two signs of 9 to 1 are needed, and enough.
  it('comes to a decision of 5 % error after two such signs of different movements', () => {
    const suspects = suspectsOf(asked(['box-zone', 'jump']), 'college');
    const seen_bySign = [suspects.map(({ of }) => [of === 0 ? 1 : 0])];
    const walk = (movement: 'reverse' | 'pop', sign: 'one-in-front' | 'crease-man-follows') =>
      ({ movement, takes: 1, signs: [sign], seen_bySign }) as const;
    const table = signTableOf([walk('reverse', 'one-in-front'), walk('pop', 'crease-man-follows')], suspects);
    const ticks = [
      { sign: 'one-in-front', seen: true },
      { sign: 'crease-man-follows', seen: true },
    ] as const;
    const share = (count: number) =>
      believeSchemes({
        schemes: asked(['box-zone', 'jump']),
        level: 'college',
        signs: table,
        manUps: [{ ticks: ticks.slice(0, count) }],
      }).manUps[0]!.share_byScheme[0]!;
    const logOdds = (count: number) => Math.log(share(count) / (1 - share(count)));
    expect(logOdds(1)).toBeCloseTo(Math.log(9), 9);
    expect(logOdds(1)).toBeLessThan(2.944439);
    expect(logOdds(2)).toBeGreaterThan(2.944439);
  });
});

describe('broken input', () => {
  const film = filmOf('box-zone');
  it.each<[Partial<BeliefQuestion>, string]>([
    [{ schemes: [] }, 'invalid weights of schemes:  (expected 0 or more, in all more than 0)'],
    [
      { schemes: [{ scheme: schemes.jump, weight: -1 }] },
      'invalid weights of schemes: -1 (expected 0 or more, in all more than 0)',
    ],
    [{ manUps: [{ film: { ...film, spots: [] } }] }, 'invalid spots of a film: 0 (expected 6)'],
    [
      { manUps: [{ film: { ...film, moments: [{ time: 0, ball: 7, defenders: [] }] } }] },
      'invalid ball at moment 1: 7 (expected 0 to 5)',
    ],
    [
      { manUps: [{ film: { ...film, moments: [{ time: 0, ball: 1, defenders: [{ x: Number.NaN, y: 0 }] }] } }] },
      'invalid place at moment 1: NaN, 0 (expected yards)',
    ],
    [{ manUps: [{ film: { ...film, moments: [...film.moments].reverse() } }] }, 'invalid time at moment 2'],
  ])('is refused', (part, message) => {
    const question = { schemes: asked(['box-zone']), level: 'college' as const, manUps: [{ film }], reading, ...part };
    expect(() => believeSchemes(question)).toThrow(RangeError);
    expect(() => believeSchemes(question)).toThrow(message);
  });
});

it('every scheme of five men can be a suspect, a shutoff on each of six', () => {
  const all = suspectsOf(asked(schemesFor(5).map(({ id }) => id as SchemeId)), 'highSchool');
  expect(all.filter(({ scheme }) => scheme.id === 'shutoff')).toHaveLength(18);
  schemesFor(5).forEach((_, of) => {
    expect(all.filter((one) => one.of === of).reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });
});
