import { clockText } from '../../playbook/index.ts';

/** What is left, s, as a scoreboard shows it: a second that has begun counts, so that 0:00 is the end. */
export function leftText(seconds: number): string {
  // A hair over a whole second is rounding, not time.
  return clockText(Math.ceil(Math.max(0, seconds) - 1e-6));
}

/** The day by the device's clock, YYYY-MM-DD. */
export function dayOf(seconds: number): string {
  const day = new Date(1000 * seconds);
  return `${day.getFullYear()}-${String(day.getMonth() + 1).padStart(2, '0')}-${String(day.getDate()).padStart(2, '0')}`;
}
