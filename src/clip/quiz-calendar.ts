/** When a question is to be asked again, by days. */
export interface Due {
  /** How many days in a row of rounds it was right at the first try. */
  readonly step: number;
  /** Number of the day from which on it is asked. */
  readonly day: number;
}

/** What a phone remembers of one player and one quiz. */
export interface Calendar {
  /** Rounds that were ended, the last question asked or not. */
  readonly rounds: number;
  /** One for each question. */
  readonly due_byQuestion: readonly Due[];
}

/**
 * Days until a question comes again: the next, once it is right at the first try a longer gap each time. Gaps that grow keep more in mind over the weeks (Kang et al. 2014, Psychon Bull Rev
 * 21:1544), and the best gap grows with how long it has to last (Cepeda et al. 2008, Psychol Sci 19:1095). The days themselves: common practice, no source.
 */
export const dayGaps: readonly number[] = [1, 3, 7, 14, 30];

/** Nothing asked yet: all of it is due. */
export function newCalendar(questions: number): Calendar {
  return { rounds: 0, due_byQuestion: Array.from({ length: questions }, () => ({ step: 0, day: 0 })) };
}

/** Questions that are due on a day, of those that are asked about. */
export function dueOn({ due_byQuestion }: Calendar, day: number, asked: readonly number[]): readonly number[] {
  return asked.filter((question) => (due_byQuestion[question]?.day ?? 0) <= day);
}

/** The first day on which one of these is due. */
export function nextDay({ due_byQuestion }: Calendar, asked: readonly number[]): number {
  return Math.min(...asked.map((question) => due_byQuestion[question]?.day ?? 0));
}

/**
 * The calendar after a round on a day. `isKnown_byQuestion`: right at the first try; undefined for what was not asked, which stays as it was. What was practised before its day moves nothing
 * further away: only a gap that has passed shows that it was kept in mind.
 */
export function afterRound(
  calendar: Calendar,
  day: number,
  isKnown_byQuestion: readonly (boolean | undefined)[],
): Calendar {
  return {
    rounds: calendar.rounds + 1,
    due_byQuestion: calendar.due_byQuestion.map((due, question) => {
      const isKnown = isKnown_byQuestion[question];
      if (isKnown === undefined || (isKnown && due.day > day)) return due;
      if (!isKnown) return { step: 0, day: day + dayGaps[0]! };
      const gap = dayGaps[Math.min(due.step, dayGaps.length - 1)]!;
      return { step: due.step + 1, day: day + gap };
    }),
  };
}

/** The calendar of a text that was kept; undefined for a text that is none of this quiz. */
export function readCalendar(text: string | null, questions: number): Calendar | undefined {
  try {
    const read = JSON.parse(text ?? '') as Partial<Calendar> | null;
    const due = read?.due_byQuestion;
    const isWhole = (value: unknown): boolean => Number.isInteger(value) && (value as number) >= 0;
    if (!isWhole(read?.rounds) || !Array.isArray(due) || due.length !== questions) return undefined;
    return due.every((one) => isWhole(one?.step) && isWhole(one?.day)) ? (read as Calendar) : undefined;
  } catch {
    return undefined;
  }
}
