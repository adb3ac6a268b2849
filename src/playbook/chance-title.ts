import type { ChanceResult, ChanceSide } from './chance-schema.ts';
import type { Chance } from './schema.ts';

/** What a result is called. */
export const chanceResultWords: Readonly<Record<ChanceResult, string>> = {
  goal: 'goal',
  saved: 'saved',
  wide: 'shot wide',
  pipe: 'off the pipe',
  blocked: 'shot blocked',
  turnover: 'turnover',
  shotClock: 'shot clock ran out',
  expired: 'penalty ran out',
  newFlag: 'another flag',
};

/** Whose man-up it was, in a list. */
const sideWords: Readonly<Record<ChanceSide, string>> = { ours: 'ours', theirs: 'theirs', others: 'another team’s' };

/** A man-up in a few words, for lists and messages: `2026-03-14 harbor, period 2 7:11, theirs: saved`. */
export function chanceTitle({ side, date, opponent, period, clock, result }: Chance): string {
  const time = [period === undefined ? '' : `period ${period}`, clock === undefined ? '' : clockText(clock)];
  const parts = [[date, opponent].filter(isWritten).join(' '), time.filter(isWritten).join(' '), sideWords[side]];
  return `${parts.filter(isWritten).join(', ')}: ${chanceResultWords[result]}`;
}

/** Seconds as on a scoreboard: `clockText(431)` is '7:11'. Parts of a second are left out. */
export function clockText(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}

function isWritten(text: string | undefined): boolean {
  return text !== undefined && text !== '';
}
