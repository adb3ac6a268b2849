import { describe, expect, it } from 'vitest';
import { duty } from '../defense/duty.ts';
import { summarizeLooks } from './summarize.ts';
import type { LookWindow } from './window.ts';

/** One window in short: trial, from > to, opens to closes; the rest as given or usual. */
function window(
  trial: number,
  from: number,
  to: number,
  opens: number,
  closes: number,
  rest: Partial<LookWindow> = {},
): LookWindow {
  return {
    trial,
    from,
    to,
    opens,
    closes,
    kind: 'pass',
    seenAt: opens + 8,
    completion: 0.9,
    shotOdds: 0.3,
    leftBy: 1,
    duty: duty.split,
    lateBy: 0.4,
    ...rest,
  };
}

describe('looks over many trials', () => {
  it('count a trial once, by its first window', () => {
    const windows = [window(0, 0, 1, 5, 6), window(0, 0, 1, 2, 3), window(1, 0, 1, 4, 7), window(3, 0, 1, 3, 3.5)];
    const [look] = summarizeLooks(windows, 5);
    expect(look).toMatchObject({ from: 0, to: 1, share: 0.6, opens: 3, closes: 3.5 });
    expect(look!.windows.map(({ trial, opens }) => [trial, opens])).toEqual([
      [0, 2],
      [1, 4],
      [3, 3],
    ]);
  });

  it('do not depend on the order of the windows', () => {
    const windows = [
      window(0, 0, 1, 5, 6),
      window(0, 0, 1, 2, 3),
      window(1, 2, 2, 4, 7, { kind: 'shot' }),
      window(2, 0, 1, 1, 2),
    ];
    expect(summarizeLooks([...windows].reverse(), 3)).toEqual(summarizeLooks(windows, 3));
  });

  it('give mean odds, the usual kind, and who left it most often with his own mean lateness', () => {
    const windows = [
      window(0, 0, 1, 1, 2, { completion: 1, shotOdds: 0.2, kind: 'skip', lateBy: 0.2 }),
      window(1, 0, 1, 1, 2, { completion: 0.8, shotOdds: 0.4, kind: 'skip', lateBy: 0.6 }),
      window(2, 0, 1, 1, 2, { completion: 0.6, shotOdds: 0.6, leftBy: 1, duty: duty.man, lateBy: 3 }),
    ];
    const [look] = summarizeLooks(windows, 3);
    expect(look!.completion).toBeCloseTo(0.8, 12);
    expect(look!.shotOdds).toBeCloseTo(0.4, 12);
    expect(look!.kind).toBe('skip');
    expect(look!.leftBy.defender).toBe(1);
    expect(look!.leftBy.duty).toBe(duty.split);
    expect(look!.leftBy.lateBy).toBeCloseTo(0.4, 12);
  });

  it('say -1 when the scheme gives the man to nobody, whatever duty stood there', () => {
    const windows = [
      window(0, 0, 1, 1, 2, { leftBy: -1, duty: duty.place, lateBy: 0 }),
      window(1, 0, 1, 1, 2, { leftBy: -1, duty: duty.lane, lateBy: 0 }),
      window(2, 0, 1, 1, 2),
    ];
    expect(summarizeLooks(windows, 3)[0]!.leftBy).toMatchObject({ defender: -1, lateBy: 0 });
  });

  it('put what promises most first and leave out what hardly ever comes', () => {
    const often = [0, 1, 2, 3].map((trial) => window(trial, 0, 1, 1, 2));
    const good = [0, 1, 2].map((trial) => window(trial, 0, 2, 1, 2, { shotOdds: 0.6 }));
    const rare = [window(0, 0, 3, 1, 2, { shotOdds: 0.9 })];
    const looks = summarizeLooks([...often, ...good, ...rare], 25);
    expect(looks.map(({ to }) => to)).toEqual([2, 1]);
  });

  it('leave out a window whose ball has gone on before it could be seen', () => {
    const [look] = summarizeLooks(
      [window(0, 0, 1, 2, 3, { completion: 0 }), window(0, 0, 1, 5, 6), window(1, 0, 1, 2, 3, { completion: 0 })],
      2,
    );
    expect(look).toMatchObject({ share: 0.5, opens: 5 });
  });

  it('of no trials are none', () => expect(summarizeLooks([], 0)).toEqual([]));
});
