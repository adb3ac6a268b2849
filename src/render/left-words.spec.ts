import { describe, expect, it } from 'vitest';
import { duty, type LookReport, type Trace } from '../engine/index.ts';
import { handMadeNames, handMadeTrace } from './hand-made.fixture.ts';
import { leftWords, lookLeftWords } from './left-words.ts';

describe('leftWords', () => {
  it.each([
    ['man', 0.6, 'WL was left: ll had him and came 0.6 s late.'],
    ['split', 0.31, 'WL was left: ll split him and another and came 0.3 s late.'],
    ['pipe', 1, 'WL was left: ll guarded the pipe and came 1.0 s late.'],
    ['ball', 0.2, 'WL was left: ll had him once the ball was with him and came 0.2 s late.'],
    ['front', 0, 'WL was open although ll fronted him and was in time.'],
    ['lane', 0.05, 'WL was open although ll stood in the lane to him and was in time.'],
  ] as const)('says of a man on a %s duty, %d s late', (kind, lateBy, sentence) => {
    expect(leftWords({ to: 4, leftBy: 3, duty: duty[kind], lateBy }, handMadeNames)).toBe(sentence);
  });

  // "C was open although c was on the ball and was in time."
  it('says whose man it is where names differ by the size of a letter alone', () => {
    const names = { ...handMadeNames, defense: handMadeNames.defense.map(() => 'wl') };
    expect(leftWords({ to: 4, leftBy: 3, duty: duty.man, lateBy: 0 }, names)).toBe(
      'WL was open although their wl had him and was in time.',
    );
  });

  // Until .75 s ll splits WL (4) and TL (2), then he is on the ball; nobody else ever has TL.
  const trace = handMadeTrace();
  const nobody = { to: 2, leftBy: -1, duty: duty.place, lateBy: 0 };

  it('names who had him before, and where that man went', () => {
    expect(leftWords(nobody, handMadeNames, { trace, time: 1 })).toBe(
      'TL was left: ll went to the ball and nobody took him.',
    );
  });

  it.each([
    [duty.man, 3, -1, 'went to WR'],
    [duty.split, 3, 5, 'went to split WR and C'],
    [duty.split, 3, -1, 'sagged off WR'],
    [duty.lane, 3, -1, 'went into the lane to WR'],
    [duty.lock, 3, -1, 'locked on WR'],
    [duty.pipe, 3, -1, 'went to the pipe'],
    [duty.front, 3, -1, 'went to front WR'],
    [duty.place, 2, -1, 'went to his place'],
  ])('tells where he went by his new duty %d', (kind, a, b, went) => {
    const duties_byFrame = trace.duties_byFrame.slice();
    for (let frame = 15; frame < trace.frames; frame += 1) duties_byFrame.set([kind, a, b], (frame * 5 + 3) * 3);
    const other: Trace = { ...trace, duties_byFrame };
    expect(leftWords(nobody, handMadeNames, { trace: other, time: 1 })).toContain(`ll ${went} and nobody`);
  });

  it('says that it is the scheme when nobody had him', () => {
    const left = { ...nobody, to: 0 };
    const duties_byFrame = trace.duties_byFrame.map((value, at) => (at % 15 === 4 ? 1 : value));
    expect(leftWords(left, handMadeNames)).toBe('P was left: the scheme gives him to nobody.');
    expect(leftWords(left, handMadeNames, { trace: { ...trace, duties_byFrame }, time: 1 })).toBe(
      'P was left: the scheme gives him to nobody.',
    );
  });
});

describe('lookLeftWords', () => {
  const look = {
    kind: 'skip',
    from: 'TR',
    to: 'WL',
    share: 0.4,
    opens: 2,
    closes: 3,
    completion: 0.8,
    shotValue: 0.3,
    value: 0.27,
    valueLow: 0.2,
    valueHigh: 0.33,
    replays: 60,
  } as const satisfies Omit<LookReport, 'leftBy'>;

  it.each([
    [{ defender: 'll', duty: 'man', lateBy: 0.64 }, 'WL was left: ll had him and came 0.6 s late.'],
    [{ defender: null, duty: 'place', lateBy: 0 }, 'WL was left: the scheme gives him to nobody.'],
  ])('says it of a report: %j', (leftBy, sentence) => {
    expect(lookLeftWords({ ...look, leftBy })).toBe(sentence);
  });

  // On the sheet of our own man-down unit the defenders are ours.
  it('says that a defender is ours where his name is that of theirs', () => {
    const leftBy = { defender: 'c', duty: 'ball', lateBy: 0, share: 1 } as LookReport['leftBy'];
    expect(lookLeftWords({ to: 'C', leftBy })).toBe(
      'C was open although our c had him once the ball was with him and was in time.',
    );
  });
});
