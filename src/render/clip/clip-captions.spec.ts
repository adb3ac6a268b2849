import { describe, expect, it } from 'vitest';
import { handMadeNames, handMadePlay } from '../hand-made.fixture.ts';
import { clipCaptions } from './clip-captions.ts';
import { handMadeScript, handMadeWindow } from './hand-made-script.fixture.ts';

const captions = (windows = [handMadeWindow]) => clipCaptions(handMadeScript(windows), handMadePlay, handMadeNames);
const textsOf = (windows?: Parameters<typeof captions>[0]): readonly string[] =>
  captions(windows).map(([, text]) => text);

describe('captions', () => {
  it('tell step, opening, pass, catch, shot and goal in order of time', () => {
    const said = captions();
    expect(said.map(([time]) => time)).toEqual([0, 0, 0.3, 0.5, 1, 1.5, 1.65]);
    const begins = [
      'The set is up',
      'Step "skip" begins',
      'WL is open',
      'TR skips to WL',
      'WL catches',
      'WL shoots',
      'GOAL',
    ];
    expect(said.map(([, text], index) => text.startsWith(begins[index]!))).toEqual(begins.map(() => true));
  });

  it('tell what a step asks for in words, not in the numbers of the file', () => {
    const step = textsOf().find((text) => text.startsWith('Step'));
    expect(step).toBe(
      'Step "skip" begins: TR fakes to WR; C picks WL\'s man; WL steps in, ready to shoot; WR seals C\'s man; TR skips to WL.',
    );
  });

  it('tell an opening of this man-up once where it shuts for a moment, and again where it comes anew', () => {
    const again = (opens: number) => ({ ...handMadeWindow, opens, closes: opens + 0.1 });
    const openings = (texts: readonly string[]) =>
      texts.filter((text) => text === 'WL is open to a skip from TR.').length;
    expect(openings(textsOf([handMadeWindow, again(0.8)]))).toBe(1);
    expect(openings(textsOf([handMadeWindow, again(1.9)]))).toBe(2);
    expect(openings(textsOf([{ ...handMadeWindow, trial: 4 }]))).toBe(0);
  });

  it('tell in one sentence who is open at one moment', () => {
    const other = { ...handMadeWindow, to: 5, kind: 'feed' } as const;
    expect(textsOf([handMadeWindow, other])).toContain('TR has WL open to a skip and C to a feed.');
    const third = { ...handMadeWindow, to: 0, kind: 'pass' } as const;
    expect(textsOf([handMadeWindow, other, third])).toContain('TR has WL open to a skip, C to a feed and P to a pass.');
    expect(textsOf([handMadeWindow, { ...other, opens: 0.5 }])).toContain('C is open to a feed from TR.');
  });

  it('leave out a try that was given up before this one', () => {
    const script = handMadeScript([]);
    const events = [{ kind: 'reset', time: 0.2, refused: null } as const, ...script.trace.events];
    const resets = (began: number): number =>
      clipCaptions({ ...script, began, trace: { ...script.trace, events } }, handMadePlay, handMadeNames).filter(
        ([, text]) => text.includes('resets'),
      ).length;
    expect([0, 0.1, 0.3].map(resets)).toEqual([1, 1, 0]);
  });

  it('call a man free who may shoot himself', () => {
    expect(textsOf([{ ...handMadeWindow, kind: 'shot', to: 1 }])).toContain('TR is free to shoot.');
  });

  it('keep a number on the line of its unit', () => {
    expect(textsOf().join(' ')).not.toMatch(/\d (%|yd|s)\b/);
    expect(textsOf().join(' ')).toContain('86\u00a0%');
  });
});
