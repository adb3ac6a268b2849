import { type Calendar, newCalendar, readCalendar } from './quiz-calendar.ts';

/** What of a player is kept on this phone, where the browser lets a page keep anything: one that was opened from a file may not be. */
export interface KeptCalendar {
  readonly calendar: Calendar;
  readonly isKept: boolean;
}

/** In place of what the browser does not keep: for as long as the page is open. */
const inMemory = new Map<string, Calendar>();

/** The calendar of a number; a new one when nothing is kept of it. */
export function loadCalendar(quiz: string, number: number, questions: number): KeptCalendar {
  const key = keyOf(quiz, number);
  try {
    const kept = readCalendar(localStorage.getItem(key), questions);
    // Tried at once, so that nobody is told of days that will be forgotten.
    localStorage.setItem(key, JSON.stringify(kept ?? newCalendar(questions)));
    return { calendar: kept ?? newCalendar(questions), isKept: true };
  } catch {
    return { calendar: inMemory.get(key) ?? newCalendar(questions), isKept: false };
  }
}

export function keepCalendar(quiz: string, number: number, calendar: Calendar): void {
  const key = keyOf(quiz, number);
  inMemory.set(key, calendar);
  try {
    localStorage.setItem(key, JSON.stringify(calendar));
  } catch {
    // Told at the start already: the page works without.
  }
}

/** Number of today, by the clock of the phone: days begin at its midnight. */
export function today(): number {
  const now = new Date();
  return Math.floor((now.getTime() - now.getTimezoneOffset() * 60_000) / 86_400_000);
}

function keyOf(quiz: string, number: number): string {
  return `sliderule-quiz ${quiz} ${number}`;
}
