import { describe, expect, it } from 'vitest';
import { adviseCall, type Call, drawCall, type MeasuredCall } from './call-advice.ts';
import { beliefOf } from './scheme-belief.ts';

const around = (mean: number, half = 0) => ({ mean, low: mean - half, high: mean + half });
const call = (play: string): Call => ({ play, fromSide: 'right' });
const measured = (play: string, box: number, five: number): MeasuredCall => ({
  ...call(play),
  goals_byScheme: { box: around(box), five: around(five) },
});
const calls = ['lantern', 'quarry', 'ferry'].map(call);
const table = [measured('lantern', 0.5, 0.2), measured('quarry', 0.3, 0.4), measured('ferry', 0.25, 0.25)];

describe('the call', () => {
  it('is the best against what is believed, when the belief is trusted in full', () => {
    const advice = adviseCall(calls, table, { box: 0.9, five: 0.1 }, { learnt: 3, trust: 1 });
    expect(advice).toMatchObject({ kind: 'measured', calls: [{ play: 'lantern', share: 1 }, {}, {}], untried: 0 });
    // .9 times .5 and .1 times .2, by hand.
    if (advice.kind === 'measured') expect(advice.calls[0]!.goals.mean).toBeCloseTo(0.47, 10);
    expect(drawCall(advice, 1, 0)).toMatchObject({ play: 'lantern' });
  });

  it('is mixed so that it cannot be guessed, when it is not trusted at all', () => {
    // Two calls, by hand: p .5 + (1 - p) .3 = p .2 + (1 - p) .4, so p is 1/4 and the mix brings .35.
    const advice = adviseCall(calls, table, { box: 0.9, five: 0.1 }, { learnt: 2, trust: 0 });
    if (advice.kind !== 'measured') throw new TypeError('not measured');
    const share = (play: string) => advice.calls.find((one) => one.play === play)!.share;
    expect(share('lantern')).toBeCloseTo(0.25, 6);
    expect(share('quarry')).toBeCloseTo(0.75, 6);
    expect(advice.atWorst).toBeCloseTo(0.35, 6);
  });

  it('comes as often as the mix says, the same again for the same number, and otherwise with another seed', () => {
    const advice = adviseCall(calls, table, { box: 0.9, five: 0.1 }, { learnt: 2, trust: 0 });
    const drawn = Array.from({ length: 400 }, (_, at) => drawCall(advice, 11, at)!.play);
    expect(Array.from({ length: 400 }, (_, at) => drawCall(advice, 11, at)!.play)).toEqual(drawn);
    expect(Array.from({ length: 400 }, (_, at) => drawCall(advice, 12, at)!.play)).not.toEqual(drawn);
    // 400 draws of 1/4: within 4 standard errors of 100, which are 4 times 8.7.
    expect(Math.abs(drawn.filter((one) => one === 'lantern').length - 100)).toBeLessThan(35);
  });

  it('comes by turns where luck alone tells the calls apart, and always where it does not', () => {
    const tried = (half: number): readonly MeasuredCall[] =>
      [0.27, 0.24, 0.24].map((goals, at) => ({ ...calls[at]!, goals_byScheme: { box: around(goals, half) } }));
    const shares = (half: number) => {
      const advice = adviseCall(calls, tried(half), { box: 1 }, { learnt: 3, trust: 0.7 });
      return advice.kind === 'measured' ? advice.calls.map(({ share }) => share) : [];
    };
    const [first, ...others] = shares(0.03);
    expect(first).toBeGreaterThan(0.6);
    expect(first).toBeLessThan(0.95);
    expect(Math.min(...others)).toBeGreaterThan(0.01);
    expect(shares(0.005)).toEqual([1, 0, 0]);
  });

  it('is worth less the less time is left: straight between the times that were tried, and nothing without any', () => {
    const one = { ...call('lantern'), goals_byScheme: { box: around(0.3) } };
    const tried = {
      ...one,
      shorter: [
        { left: 30, goals_byScheme: { box: around(0.2) } },
        { left: 10, goals_byScheme: { box: around(0.12) } },
      ],
    };
    const worth = (left: number, known: MeasuredCall = tried) => {
      const ground = { learnt: 1, trust: 1, time: { left, tried: 60 } };
      const advice = adviseCall([call('lantern')], [known], { box: 1 }, ground);
      return advice.kind === 'measured' ? advice.calls[0]!.goals.mean : Number.NaN;
    };
    const times = [120, 60, 45, 30, 20, 10, 5, 0];
    const worths = [0.3, 0.3, 0.25, 0.2, 0.16, 0.12, 0.06, 0];
    times.forEach((left, at) => {
      expect(worth(left), `${left} s`).toBeCloseTo(worths[at]!, 10);
    });
    // Where only the whole penalty was tried, it is worth what that is.
    expect(worth(10, one)).toBe(0.3);
  });

  it('never holds more calls than are learnt', () => {
    const advice = adviseCall(calls, table, { box: 0.5, five: 0.5 }, { learnt: 1, trust: 0 });
    if (advice.kind !== 'measured') throw new TypeError('not measured');
    expect(advice.calls.filter(({ share }) => share > 0)).toHaveLength(1);
  });

  it('goes by the order of the playbook, in turn, where nothing was tried', () => {
    const advice = adviseCall(calls, [], { box: 1 }, { learnt: 2, trust: 0.7 });
    expect(advice).toEqual({ kind: 'inOrder', calls: calls.slice(0, 2) });
    expect([0, 1, 2].map((at) => drawCall(advice, 11, at)?.play)).toEqual(['lantern', 'quarry', 'lantern']);
    expect(adviseCall(calls, table, { 'two-down': 1 }, { learnt: 2, trust: 0.7 }).kind).toBe('inOrder');
    expect(drawCall(adviseCall([], [], { box: 1 }, { learnt: 2, trust: 0.7 }), 11, 0)).toBeUndefined();
  });

  it('says how much of the belief was tried against nothing', () => {
    const advice = adviseCall(calls, table, { box: 0.6, five: 0.2, jump: 0.2 }, { learnt: 3, trust: 1 });
    expect(advice).toMatchObject({ untried: expect.closeTo(0.2, 10) });
  });
});

describe('what is believed', () => {
  const prior = { box: 3, five: 1 };
  const ground = { prior, seenBefore: [], seenNow: null, odds: [] };

  it('is the prior before anything is seen', () => {
    expect(beliefOf(ground)).toEqual({ box: 0.75, five: 0.25 });
  });

  it('counts each man-up before as one beside two of the prior', () => {
    // (2 * .25 + 2) / 4, by hand.
    expect(beliefOf({ ...ground, seenBefore: ['five', 'five'] }).five).toBeCloseTo(0.625, 10);
  });

  it('takes what is seen now by Bayes: odds of 1 to 3 times .85 to .15', () => {
    expect(beliefOf({ ...ground, seenNow: 'five' }).five).toBeCloseTo(0.85 / (0.85 + 3 * 0.15), 10);
  });

  it('takes ticks by their odds, and leaves out one that nothing can explain', () => {
    expect(beliefOf({ ...ground, odds: [{ box: 0.1, five: 0.6 }] }).five).toBeCloseTo(0.6 / (0.6 + 0.3), 10);
    expect(beliefOf({ ...ground, odds: [{ box: 0, five: 0 }] })).toEqual({ box: 0.75, five: 0.25 });
  });

  it('asks for some weight', () => {
    expect(() => beliefOf({ ...ground, prior: { box: 0 } })).toThrow(RangeError);
  });
});
