import type { RoundAnswer } from '../render/index.ts';

/** How one question has gone in a round so far. */
export interface Asked {
  /** How often it was asked, and answered rightly. */
  readonly asked: number;
  readonly right: number;
  /** How quickly the first time; null before that. */
  readonly pace: Pace | null;
  /** How many times in a row it has been right since it was missed last; null while it has not been missed. */
  readonly since: number | null;
}

export type Pace = 'quick' | 'steady' | 'slow';

/** One round of a quiz: what is still to be asked, in this order, and how it has gone. */
export interface Round {
  readonly queue: readonly number[];
  /** One for each question of the quiz, whether it is in this round or not. */
  readonly asked_byQuestion: readonly Asked[];
}

/**
 * After so many other questions a missed one comes back: the first number once it was missed, the next each time that it was right since. Spaced beats massed (g = .74 over 29 studies, Latimier, Peyre and
 * Ramus 2021, Educ Psychol Rev 33:959); gaps that grow end no better than even ones but keep more in mind on the way (Kang, Lindsey, Mozer and Pashler 2014,
 * Psychon Bull Rev 21:1544). The numbers themselves: common practice, no source.
 */
export const gaps: readonly number[] = [2, 4, 8];
/** One question is asked no oftener than this in a round: what is not known by then is left for another day. */
export const mostAsked = 4;

/** A round of these questions, out of so many that the quiz has. */
export function beginRound(questions: readonly number[], all: number): Round {
  const untouched: Asked = { asked: 0, right: 0, pace: null, since: null };
  return { queue: questions, asked_byQuestion: Array.from({ length: all }, () => untouched) };
}

/** The round after its first question was answered. RangeError when there is none. */
export function answerNext({ queue, asked_byQuestion }: Round, isRight: boolean, pace: Pace): Round {
  const [question, ...rest] = queue;
  const before = question === undefined ? undefined : asked_byQuestion[question];
  if (question === undefined || before === undefined) throw new RangeError('the round is over');
  const since = isRight ? (before.since === null ? null : before.since + 1) : 0;
  const now: Asked = {
    asked: before.asked + 1,
    right: before.right + (isRight ? 1 : 0),
    pace: before.pace ?? pace,
    since,
  };
  return {
    queue: withIt(rest, question, comesBackAt(now, rest.length)),
    asked_byQuestion: asked_byQuestion.map((one, at) => (at === question ? now : one)),
  };
}

/** After how many of those that are left it comes back; null: not in this round. */
function comesBackAt({ asked, since }: Asked, left: number): number | null {
  if (since === null || asked >= mostAsked) return null;
  const gap = gaps[since];
  if (gap === undefined) return null;
  // Too few are left for the gap: what has been right again is done for today, what has not comes last.
  if (gap > left) return since === 0 ? left : null;
  return gap;
}

function withIt(rest: readonly number[], question: number, after: number | null): readonly number[] {
  return after === null ? rest : [...rest.slice(0, after), question, ...rest.slice(after)];
}

/** How one question went, as a code has room for it: three times and more are told as three, and one that was missed stays one that was missed. */
export function toldAnswer({ asked, right, pace }: Asked): RoundAnswer {
  const times = Math.min(asked, 3);
  return { asked: times, right: Math.min(right, right < asked ? times - 1 : times), pace };
}

/** In which third of his time he chose. */
export function paceOf(seconds: number, limit: number): Pace {
  if (seconds <= limit / 3) return 'quick';
  return seconds <= (2 * limit) / 3 ? 'steady' : 'slow';
}
