import { describe, expect, it } from 'vitest';
import { type RuleCodeId, ruleCodes } from '../../engine/index.ts';
import { versus } from './advice.ts';
import { untapped } from './bench-event.ts';
import { gameOf, wallAtStart } from './bench-taps.fixture.ts';
import { foldGame, stateLater } from './fold-game.ts';
import { type Situation, situationOf, warningBetween } from './situation.ts';

/** "manUp 6v5 24.0 fixed": a situation in a few words. */
function words(situation: Situation): string {
  switch (situation.kind) {
    case 'manUp':
    case 'manDown': {
      const { kind, strength, left, allLeft, short, goalFrees, waiting } = situation;
      const men = `${strength.attackers}v${strength.defenders}`;
      const parts = [kind, men, left.toFixed(0), allLeft > left ? `all ${allLeft.toFixed(0)}` : ''];
      return [...parts, goalFrees === short ? '' : `goal frees ${goalFrees}`, waiting > 0 ? `waiting ${waiting}` : '']
        .filter(Boolean)
        .join(' ');
    }
    case 'evenShort':
      return `evenShort ${situation.strength.attackers}v${situation.strength.defenders} ${situation.left.toFixed(0)}`;
    case 'flagDown':
      return `flagDown ${situation.forUs ? 'for us' : 'on us'}`;
    case 'arriving':
      return `arriving ${situation.forUs ? 'theirs' : 'ours'} ${situation.ago.toFixed(0)}`;
    case 'periodOver':
      return `periodOver ${situation.period}${situation.carried.length > 0 ? ` carries ${versus(situation.strength)}` : ''}`;
    default:
      return situation.kind;
  }
}

interface Case {
  readonly what: string;
  readonly code?: RuleCodeId;
  readonly taps: readonly string[];
  /** "40: manUp 6v5 20": what is so at a second of the device's clock. */
  readonly then: readonly string[];
}

// Counts of men: inlaxref.org, play of the game (six and seven, men who serve count). How penalties run: see penalty-box.spec.ts.
const cases: readonly Case[] = [
  {
    what: 'a technical foul: six against five, then the run from the table, then even',
    taps: ['0 start', '10 fouls them 30', '20 start'],
    then: ['15: manUp 6v5 30', '30: manUp 6v5 20', '50: arriving theirs 0', '56: arriving theirs 6', '58: even'],
  },
  {
    what: 'a flag is a free play until the foul is given',
    taps: ['0 start', '10 flag them', '14 fouls them 60', '14 start'],
    then: ['15: manUp 6v5 59'],
  },
  {
    what: 'a man-up that outlasts its chance: he runs in all the same',
    taps: ['0 start', '10 fouls them 30', '10 start', '20 result turnover'],
    then: ['25: manUp 6v5 15', '42: arriving theirs 2', '48: even'],
  },
  { what: 'a flag that is down', taps: ['0 start', '10 flag them'], then: ['12: flagDown for us'] },
  { what: 'a flag on us', taps: ['0 start', '10 flag us'], then: ['12: flagDown on us'] },
  { what: 'a flag taken up', taps: ['0 start', '10 flag us', '12 flagOff'], then: ['12: even'] },
  {
    what: 'a second foul makes it six against four',
    taps: ['0 start', '10 fouls them 60', '10 start', '20 fouls them 30', '20 start'],
    then: ['25: manUp 6v4 25 all 45', '51: manUp 6v5 19'],
  },
  {
    what: 'a fourth man waits',
    taps: ['0 start', '10 fouls them 60 them 60 them 60 them 60', '10 start'],
    then: ['20: manUp 6v3 50 all 110 goal frees 2 waiting 1', '71: manUp 6v5 59'],
  },
  {
    what: 'three serve and a fourth waits longest: the next man back is the second whose time ends',
    taps: ['0 start', '10 fouls them 30 them 60 them 60 them 120', '10 start'],
    then: ['10: manUp 6v3 60 all 150 goal frees 2 waiting 1', '45: manUp 6v3 25 all 115', '75: manUp 6v5 85'],
  },
  {
    what: 'the table has another time for a penalty',
    taps: ['0 start', '10 fouls them 60', '10 start', '20 boxSet 0 44'],
    then: ['20: manUp 6v5 44', '30: manUp 6v5 34'],
  },
  {
    what: 'fouls of both at once: five against five, fixed; then we are more',
    taps: ['0 start', '10 both them 60 us 30', '10 start'],
    then: ['20: evenShort 5v5 20', '45: manUp 6v5 25'],
  },
  {
    what: 'a goal ends it',
    taps: ['0 start', '10 fouls them 60', '10 start', '30 result goal'],
    then: ['31: even'],
  },
  {
    what: 'a goal does not end what is fixed',
    taps: ['0 start', '10 fouls them 60 fixed', '10 start', '30 result goal', '40 start'],
    then: ['35: manUp 6v5 40 goal frees 0', '50: manUp 6v5 30 goal frees 0'],
  },
  {
    what: 'we are short, and their goal lets our man back',
    taps: ['0 start', '10 fouls us 60 man 7', '10 start', '30 result goal'],
    then: ['20: manDown 6v5 50', '31: even'],
  },
  {
    what: 'an official lets a man go',
    taps: ['0 start', '10 fouls them 60', '10 start', '20 letGo 0'],
    then: ['21: even'],
  },
  {
    what: 'penalty time stands while the clock does',
    taps: ['0 start', '10 fouls them 60', '40 start', '50 stop'],
    then: ['39: manUp 6v5 60', '90: manUp 6v5 50'],
  },
  {
    what: 'a period ends by itself, and the penalty goes on in the next',
    taps: ['0 set 1 20', '0 start', '10 fouls them 60', '10 start'],
    then: ['25: periodOver 1 carries 6 v 5'],
  },
  {
    what: 'in the next period the rest is served',
    taps: ['0 set 1 20', '0 start', '10 fouls them 60', '10 start', '40 period 2', '60 start'],
    then: ['59: manUp 6v5 50', '70: manUp 6v5 40'],
  },
  {
    what: 'a clock that was started late takes the penalty with it',
    taps: ['0 start', '10 fouls them 60', '40 set 1 570'],
    then: ['41: manUp 6v5 40'],
  },
  {
    what: 'a clock that ran too long gives the time back, but never more than there was',
    taps: ['0 start', '10 fouls them 60', '10 start', '50 set 1 560'],
    then: ['50: manUp 6v5 30'],
  },
  {
    what: 'at 14U a goal ends nothing (as read; to confirm)',
    code: 'usal14U',
    taps: ['0 start', '10 fouls them 60', '10 start', '30 result goal'],
    then: ['31: manUp 6v5 40 goal frees 0'],
  },
  {
    what: 'at 10U nobody is a man up (uslacrosse.org, since 2020)',
    code: 'usal10U',
    taps: ['0 start', '10 fouls them 60', '10 start'],
    then: ['20: noManUp'],
  },
];

describe.each(cases)('$what', ({ code = 'nfhs', taps, then }) => {
  it.each(then)('%s', (line) => {
    const [at, expected] = line.split(': ');
    const rules = ruleCodes[code];
    const until = taps.filter((tap) => Number(tap.split(' ')[0]) <= Number(at));
    const state = stateLater(foldGame(gameOf(until), rules), rules, wallAtStart + Number(at));
    expect(words(situationOf(state, rules))).toBe(expected);
  });
});

/** "us restart 10-30 goal": the chances of a game at a second of the device's clock, in a few words. */
function chances(taps: readonly string[], at = 1_000): readonly string[] {
  const state = stateLater(foldGame(gameOf(taps), ruleCodes.nfhs), ruleCodes.nfhs, wallAtStart + at);
  const all = [...state.chances, ...(state.open === null ? [] : [state.open])];
  return all.map(({ side, start, from, to, result, shots, call, penalty }) => {
    const parts = [side, start, `${from}-${to ?? ''}`, result ?? 'on', shots > 0 ? `shots ${shots}` : ''];
    return [...parts, call?.play ?? '', penalty !== null && penalty.men > 1 ? `men ${penalty.men}` : '']
      .filter(Boolean)
      .join(' ');
  });
}

describe('a chance', () => {
  it.each([
    ['runs out', ['0 start', '10 fouls them 30', '10 start'], ['us restart 10-40 expired']],
    [
      'ends with its result',
      ['0 start', '10 fouls them 30', '10 start', '25 result saved'],
      ['us restart 10-25 saved'],
    ],
    [
      'keeps the result that is tapped a little late',
      ['0 start', '10 fouls them 30', '10 start', '44 result wide'],
      ['us restart 10-40 wide'],
    ],
    [
      'takes no result that comes much later',
      ['0 start', '10 fouls them 30', '10 start', '90 result wide'],
      ['us restart 10-40 expired'],
    ],
    [
      'is one though the second foul comes while it is on',
      ['0 start', '10 fouls them 60', '10 start', '20 fouls them 30', '20 start', '30 result goal'],
      ['us restart 10-30 goal men 2'],
    ],
    [
      'is another when the ball is back while they are still short',
      ['0 start', '10 fouls them 60', '10 start', '20 result turnover', '30 begun', '45 result goal'],
      ['us restart 10-20 turnover', 'us transition 30-45 goal'],
    ],
    [
      'is not begun anew by its own end, though the clock was never started',
      ['0 start', '10 fouls them 60', '30 result turnover'],
      ['us restart 10-10 turnover'],
    ],
    [
      'under a flag is one when it ends there',
      ['0 start', '10 flag them', '16 result goal'],
      ['us flagDown 10-16 goal'],
    ],
    [
      'under a flag is none when the whistle ends it; what was called stays called',
      ['0 start', '10 flag them', '12 call ferry', '16 fouls them 30', '16 start', '20 result goal'],
      ['us restart 16-20 goal ferry'],
    ],
    [
      'begins when ours comes back first',
      ['0 start', '10 both them 60 us 30', '10 start', '50 result goal'],
      ['us transition 40-50 goal'],
    ],
    [
      'of theirs is one too',
      ['0 start', '10 fouls us 30', '10 start', '20 shot', '25 result goal'],
      ['them restart 10-25 goal shots 1'],
    ],
    [
      'is one too when the goal comes after the ball was lost and won again untapped',
      ['0 start', '10 fouls them 60', '10 start', '20 result turnover', '40 goal us'],
      ['us restart 10-20 turnover', 'us transition 40-40 goal'],
    ],
    [
      'ends with a goal that is tapped as one of the game',
      ['0 start', '10 fouls them 60', '10 start', '40 goal us'],
      ['us restart 10-40 goal'],
    ],
    [
      'is left as it was by a goal of the short side, and by one of even sides',
      ['0 start', '10 fouls them 30', '10 start', '20 goal them', '20 start', '60 goal us'],
      ['us restart 10-40 expired'],
    ],
    [
      'is none between two fouls that were given one after the other',
      ['0 start', '10 fouls them 60', '10 fouls us 60', '10 start'],
      [],
    ],
    [
      'carries what was called',
      ['0 start', '10 fouls them 30', '12 call quarry', '14 start'],
      ['us restart 10-40 expired quarry'],
    ],
  ])('%s', (_, taps, expected) => {
    expect(chances(taps)).toEqual(expected);
  });

  it('has its look and its shooter', () => {
    const game = gameOf([
      '0 start',
      '10 fouls them 30',
      '10 start',
      '20 seen box-zone',
      '25 result goal',
      '27 look WL CR',
    ]);
    const [chance] = foldGame(game, ruleCodes.nfhs).chances;
    expect(chance).toMatchObject({ seen: 'box-zone', look: { kind: 'feed', from: 'WL', to: 'CR' }, scorer: 16 });
    // Taken back, one tap at a time.
    expect(foldGame(untapped(game), ruleCodes.nfhs).chances[0]).toMatchObject({ result: 'goal', look: null });
    expect(foldGame(untapped(untapped(game)), ruleCodes.nfhs)).toMatchObject({ chances: [], score: { us: 0 } });
  });
});

describe('the warning', () => {
  it.each([
    [11, 10.2, null],
    [10.2, 9.9, 10],
    [9.9, 9.5, null],
    [5.1, 5, 5],
    [12, 4, 5],
    [3, 30, null],
    [null, 9, null],
  ])('from %s to %s s is %s', (before, now, expected) => {
    expect(warningBetween(before, now)).toBe(expected);
  });
});
