import { describe, expect, it } from 'vitest';
import type { RuleCodeId } from '../field/rule-code.ts';
import { ruleCodes } from '../field/rule-codes.ts';
import type { BoxEvent, GivenPenalty, TeamSide } from './penalty.ts';
import { ballAfterSimultaneous, penaltyBox, timesBack } from './penalty-box.ts';

/** "them 30", "us 60 fixed 60": a penalty in a few words. */
function penalty(words: string): GivenPenalty {
  const [side, seconds, , fixed] = words.split(' ');
  return { side: side as TeamSide, man: null, seconds: Number(seconds), fixedSeconds: Number(fixed ?? 0) };
}

function given(at: number, ...words: readonly string[]): BoxEvent {
  return { kind: 'given', at, penalties: words.map(penalty), simultaneous: false };
}

const together = (at: number, ...words: readonly string[]): BoxEvent =>
  ({ ...given(at, ...words), simultaneous: true }) as BoxEvent;
const goal = (at: number, by: TeamSide): BoxEvent => ({ kind: 'goal', at, by });

interface Situation {
  readonly code: RuleCodeId;
  /** Where the rule was read. */
  readonly source: string;
  readonly what: string;
  readonly events: readonly BoxEvent[];
  /** "45: us 1 them 0": men short at a second of play. */
  readonly short: readonly string[];
}

const situations: readonly Situation[] = [
  {
    code: 'nfhs',
    source: 'NFHS 7-2 as in the rules clinic at powershow.com/view/980e4',
    what: 'a technical foul of 30 s ends when its time does',
    events: [given(0, 'them 30')],
    short: ['0: us 0 them 1', '29.9: us 0 them 1', '30: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: 'NFHS 7-2, the same',
    what: 'a goal ends a penalty that may be ended',
    events: [given(0, 'them 60'), goal(20, 'us')],
    short: ['19.9: us 0 them 1', '20: us 0 them 0', '40: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: 'NFHS 7-2, the same',
    what: "the short team's own goal ends nothing",
    events: [given(0, 'them 60'), goal(20, 'them')],
    short: ['30: us 0 them 1', '60: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: 'powershow.com/view/980e4; lacrossepack.com',
    what: 'what no goal ends is served in full, however many goals fall',
    events: [given(0, 'them 60 fixed 60'), goal(10, 'us'), goal(50, 'us')],
    short: ['59.9: us 0 them 1', '60: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: 'powershow.com/view/980e4: no release event counts until the fixed part is over',
    what: 'of a penalty that is fixed for its first minute a goal ends only the second',
    events: [given(0, 'them 120 fixed 60'), goal(30, 'us'), goal(70, 'us')],
    short: ['31: us 0 them 1', '69: us 0 them 1', '70: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: 'umloa.org, Rule 7 penalty enforcement',
    what: 'one goal ends all that are being served and may be ended',
    events: [given(0, 'them 60'), given(10, 'them 30'), goal(20, 'us')],
    short: ['15: us 0 them 2', '20: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: 'umloa.org, Rule 7 penalty enforcement',
    what: 'a team is never more than three short: the fourth waits, and a goal does not end what waits',
    events: [given(0, 'them 60', 'them 60', 'them 60'), given(10, 'them 30'), goal(20, 'us')],
    short: ['15: us 0 them 3', '20: us 0 them 1', '49.9: us 0 them 1', '50: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: 'umloa.org, Rule 7 penalty enforcement',
    what: 'who waits begins when a man of his is back',
    events: [given(0, 'them 30', 'them 60', 'them 60'), given(5, 'them 60')],
    short: ['29: us 0 them 3', '30: us 0 them 3', '60: us 0 them 1', '89.9: us 0 them 1', '90: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: 'Rules 7-6 and 7-2-1d; galaxref.com, simultaneous fouls: 30 s offside of one, then 1 min of the other',
    what: 'of fouls at the same time both serve the shorter time in full, goal or no goal',
    events: [together(0, 'them 30', 'us 60'), goal(10, 'us'), goal(20, 'them'), goal(40, 'them')],
    short: ['25: us 1 them 1', '30: us 1 them 0', '39.9: us 1 them 0', '40: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: 'Rules 7-6 and 7-2-1d: equal times are fixed for all of it',
    what: 'equal times are served in full by both',
    events: [together(0, 'them 30', 'us 30'), goal(10, 'us'), goal(11, 'them')],
    short: ['29.9: us 1 them 1', '30: us 0 them 0'],
  },
  {
    code: 'nfhs',
    source: "officials' thread 320951: dead-ball fouls whose order is known are not simultaneous",
    what: 'fouls in a known order are served by themselves',
    events: [given(0, 'them 30'), given(0, 'us 60'), goal(10, 'us')],
    short: ['5: us 1 them 1', '10: us 1 them 0'],
  },
  {
    code: 'usal14U',
    source:
      "Rule 7-2 b-g since 2023 as read at usalacrosse.com (text cut): confirm in the rulebook; 'penalties.goalReleases' sets it",
    what: 'at 14U a goal ends nothing',
    events: [given(0, 'them 60'), goal(20, 'us')],
    short: ['59: us 0 them 1', '60: us 0 them 0'],
  },
  {
    code: 'usal10U',
    source: "uslacrosse.org, boys' youth rules since 2020: teams never being man-down or man-up",
    what: 'at 10U nobody is short',
    events: [given(0, 'them 60')],
    short: ['10: us 0 them 0'],
  },
  {
    code: 'worldLacrosse',
    source: 'Rules 50.1 and 68.1 (minor 30 s, major 1 to 3 min); that a goal ends them is from memory',
    what: 'a minor and a major of two men, the goal ends both',
    events: [given(0, 'them 30'), given(0, 'them 120'), goal(10, 'us')],
    short: ['9: us 0 them 2', '10: us 0 them 0'],
  },
];

describe.each(situations)('$code: $what', ({ code, events, short, source }) => {
  it.each(short)('%s', (line) => {
    const [at, us, them] = /^([\d.]+): us (\d) them (\d)$/.exec(line)!.slice(1).map(Number);
    expect(penaltyBox(ruleCodes[code], events, at!).short, source).toEqual({ us, them });
  });
});

describe('the box', () => {
  it('says how much of each penalty is left, and of what no goal ends', () => {
    const box = penaltyBox(ruleCodes.nfhs, [given(10, 'them 120 fixed 60')], 40);
    expect(box.penalties).toMatchObject([{ number: 0, state: 'serving', left: 90, fixedLeft: 30 }]);
    expect(timesBack(ruleCodes.nfhs, box, 'them')).toEqual([90]);
    expect(timesBack(ruleCodes.nfhs, box, 'us')).toEqual([]);
  });

  it('says when they are fewer short, not when a time is over: who waits takes the place of who is free', () => {
    // Three serve 0:30, 1:00 and 1:00, a fourth waits with 2:00. By hand: at 0:30 he goes in, at 1:00 two are back, at 2:30 he is.
    const box = penaltyBox(ruleCodes.nfhs, [given(0, 'them 30', 'them 60', 'them 60', 'them 120')], 0);
    expect(timesBack(ruleCodes.nfhs, box, 'them')).toEqual([60, 60, 150]);
  });

  it('takes the time that the table has, and keeps what no goal ends', () => {
    const events = [given(0, 'them 60', 'them 120 fixed 60', 'us 60 fixed 60')];
    const set = (penalty: number, left: number): BoxEvent => ({ kind: 'timeSet', at: 20, penalty, left });
    const left = (all: readonly BoxEvent[]) =>
      penaltyBox(ruleCodes.nfhs, all, 20).penalties.map((one) => [one.left, one.fixedLeft]);
    expect(left(events)).toEqual([
      [40, 0],
      [100, 40],
      [40, 40],
    ]);
    expect(left([...events, set(0, 43), set(1, 30), set(2, 44)])).toEqual([
      [43, 0],
      [30, 30],
      [44, 44],
    ]);
    expect(() => left([...events, set(0, 0)])).toThrow(RangeError);
    // Of a penalty that is over it changes nothing.
    expect(penaltyBox(ruleCodes.nfhs, [...events, { ...set(0, 9), at: 70 } as BoxEvent], 80).short.them).toBe(1);
  });

  it('goes by the setting where a code says that a goal ends one penalty alone', () => {
    const { penalties, counts } = ruleCodes.nfhs;
    const one = {
      counts,
      penalties: { ...penalties, goalReleasesAll: { ...penalties.goalReleasesAll, value: false } },
    };
    const events = [given(0, 'them 60'), given(10, 'them 60'), goal(20, 'us')];
    expect(penaltyBox(one, events, 21).penalties.map(({ state }) => state)).toEqual(['released', 'serving']);
  });

  it('goes by the setting where the part that no goal ends is served last', () => {
    const { penalties, counts } = ruleCodes.nfhs;
    const last = {
      counts,
      penalties: { ...penalties, nonReleasableFirst: { ...penalties.nonReleasableFirst, value: false } },
    };
    const events = [given(0, 'them 120 fixed 60'), goal(20, 'us'), goal(30, 'us')];
    expect(penaltyBox(last, events, 40).penalties).toMatchObject([{ state: 'serving', left: 40, fixedLeft: 40 }]);
    expect(penaltyBox(last, events, 80).penalties).toMatchObject([{ state: 'served', endedAt: 80 }]);
  });

  it('lets a man go where an official does, and nobody twice', () => {
    const events: readonly BoxEvent[] = [given(0, 'us 60'), { kind: 'letGo', at: 5, penalty: 0 }];
    expect(penaltyBox(ruleCodes.nfhs, events, 6).penalties).toMatchObject([{ state: 'released', endedAt: 5 }]);
    const late: readonly BoxEvent[] = [given(0, 'us 30'), { kind: 'letGo', at: 50, penalty: 0 }];
    expect(penaltyBox(ruleCodes.nfhs, late, 60).penalties).toMatchObject([{ state: 'served', endedAt: 30 }]);
  });

  it('gives the ball to who has less to serve (galaxref.com, simultaneous fouls)', () => {
    expect(ballAfterSimultaneous([penalty('them 30'), penalty('us 60')])).toBe('them');
    expect(ballAfterSimultaneous([penalty('them 60'), penalty('us 60')])).toBeNull();
  });

  it('refuses what no clock shows', () => {
    expect(() => penaltyBox(ruleCodes.nfhs, [given(-1, 'us 30')], 3)).toThrow(RangeError);
    expect(() => penaltyBox(ruleCodes.nfhs, [given(0, 'us 0')], 3)).toThrow(RangeError);
    expect(() => penaltyBox(ruleCodes.nfhs, [given(0, 'us 30 fixed 40')], 3)).toThrow(RangeError);
    expect(() => penaltyBox(ruleCodes.nfhs, [], Number.NaN)).toThrow(RangeError);
  });
});
