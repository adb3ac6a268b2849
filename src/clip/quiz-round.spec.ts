import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerNext, beginRound, gaps, mostAsked, paceOf, type Round, toldAnswer } from './quiz-round.ts';

const ten = Array.from({ length: 10 }, (_, at) => at);

/** Which questions come, when those that are named are missed the first so many times. */
function played(misses: Readonly<Record<number, number>>, questions = ten): readonly number[] {
  let round = beginRound(questions, 18);
  const order: number[] = [];
  while (round.queue.length > 0) {
    const question = round.queue[0]!;
    order.push(question);
    round = answerNext(round, round.asked_byQuestion[question]!.asked >= (misses[question] ?? 0), 'quick');
  }
  return order;
}

describe('a round', () => {
  it('asks each question once when nothing is missed', () => {
    expect(played({})).toEqual(ten);
  });

  it('brings a missed one back after two others, then after four, then after eight when there are so many', () => {
    expect(played({ 0: 1 })).toEqual([0, 1, 2, 0, 3, 4, 5, 6, 0, 7, 8, 9]);
    const eighteen = Array.from({ length: 18 }, (_, at) => at);
    expect(gaps).toEqual([2, 4, 8]);
    expect(played({ 0: 1 }, eighteen).slice(0, 18)).toEqual([
      0, 1, 2, 0, 3, 4, 5, 6, 0, 7, 8, 9, 10, 11, 12, 13, 14, 0,
    ]);
  });

  it('begins its gaps anew when it is missed again', () => {
    expect(played({ 0: 2 }).slice(0, 8)).toEqual([0, 1, 2, 0, 3, 4, 0, 5]);
  });

  it('ends with what was missed when too few others are left', () => {
    expect(played({ 9: 1 })).toEqual([...ten, 9]);
    expect(played({ 1: 1 }, [0, 1])).toEqual([0, 1, 1]);
  });

  it('ends, whatever is answered, and asks nothing too often', () => {
    fc.assert(
      fc.property(
        fc.array(fc.boolean(), { minLength: 60, maxLength: 60 }),
        fc.integer({ min: 1, max: 10 }),
        (answers, size) => {
          let round: Round = beginRound(ten.slice(0, size), 10);
          let count = 0;
          while (round.queue.length > 0) {
            round = answerNext(round, answers[count]!, 'slow');
            count += 1;
          }
          expect(count).toBeLessThanOrEqual(mostAsked * size);
          round.asked_byQuestion.forEach(({ asked, right, pace }, question) => {
            expect(asked).toBeLessThanOrEqual(question < size ? mostAsked : 0);
            expect(right).toBeLessThanOrEqual(asked);
            expect(pace).toBe(asked === 0 ? null : 'slow');
          });
        },
      ),
    );
    expect(() => answerNext(beginRound([], 3), true, 'quick')).toThrow(RangeError);
  });

  it('tells a question that was missed as missed, however often it was right later', () => {
    const told = (asked: number, right: number) => toldAnswer({ asked, right, pace: 'quick', since: null });
    expect(
      [told(1, 1), told(3, 3), told(4, 3), told(4, 0), told(2, 1)].map(({ asked, right }) => [asked, right]),
    ).toEqual([
      [1, 1],
      [3, 3],
      [3, 2],
      [3, 0],
      [2, 1],
    ]);
  });

  it('tells in which third of the time a choice was made', () => {
    expect([1, 2, 3, 4, 5, 9].map((seconds) => paceOf(seconds, 6))).toEqual([
      'quick',
      'quick',
      'steady',
      'steady',
      'slow',
      'slow',
    ]);
  });
});
