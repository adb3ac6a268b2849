import { describe, expect, it } from 'vitest';
import { afterRound, dayGaps, dueOn, newCalendar, nextDay, readCalendar } from './quiz-calendar.ts';

const all = [0, 1, 2];

describe('the days of a quiz', () => {
  it('ask all of it at first', () => {
    expect(dueOn(newCalendar(3), 100, all)).toEqual(all);
  });

  it('ask what was missed the next day, and what was known later each time', () => {
    let calendar = afterRound(newCalendar(3), 100, [true, false, undefined]);
    expect(calendar.rounds).toBe(1);
    expect(dueOn(calendar, 100, all)).toEqual([2]);
    expect(dueOn(calendar, 101, all)).toEqual([0, 1, 2]);
    const days: number[] = [];
    let day = 101;
    for (const _ of dayGaps) {
      calendar = afterRound(calendar, day, [true, undefined, undefined]);
      days.push(calendar.due_byQuestion[0]!.day - day);
      day = calendar.due_byQuestion[0]!.day;
    }
    expect(days).toEqual([3, 7, 14, 30, 30]);
  });

  it('take no gap for kept in mind that has not passed, and a miss at any time', () => {
    const first = afterRound(newCalendar(3), 100, [true, true, true]);
    const again = afterRound(first, 100, [true, false, undefined]);
    expect(again.due_byQuestion[0]).toEqual(first.due_byQuestion[0]);
    expect(again.due_byQuestion[1]).toEqual({ step: 0, day: 101 });
  });

  it('say when the next is due', () => {
    expect(nextDay(afterRound(newCalendar(3), 100, [true, true, true]), all)).toBe(101);
  });

  it('are read as they were kept, and nothing else is', () => {
    const calendar = afterRound(newCalendar(3), 100, [true, false, undefined]);
    expect(readCalendar(JSON.stringify(calendar), 3)).toEqual(calendar);
    for (const text of [null, '', '{', 'null', '[]', '{"rounds":1}', JSON.stringify(newCalendar(2))])
      expect(readCalendar(text, 3)).toBeUndefined();
    expect(readCalendar('{"rounds":1,"due_byQuestion":[{"step":0,"day":"x"},null,{}]}', 3)).toBeUndefined();
  });
});
