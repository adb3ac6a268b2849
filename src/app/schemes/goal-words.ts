import type { Interval } from '../../engine/index.ts';

/** Goals per chance as coaches write a share: ".31"; "1.04" where there are more than one. */
export function goalsText(value: number): string {
  return withoutZero(value.toFixed(2));
}

/** The interval in which the truth lies 95 times in 100: ".29 to .33". */
export function sureness({ low, high }: Interval): string {
  return `${goalsText(Math.max(0, low))} to ${goalsText(high)}`;
}

/** A change with its sign and its interval: "+.04 (.02 to .06)". */
export function differenceText({ mean, low, high }: Interval): string {
  return `${signed(mean)} (${range(low, high)})`;
}

/** A change that is written as .00 is none. */
const toldFrom = 0.005;

/** Whether a change is surely for the better or the worse; `open` when its interval holds both; undefined when there is none. */
export function signOf(difference: Interval | undefined): 'up' | 'down' | 'open' | undefined {
  if (difference === undefined) return undefined;
  if (difference.low >= toldFrom) return 'up';
  return difference.high <= -toldFrom ? 'down' : 'open';
}

/**
 * What the set makes without the play, and what the play adds to it or costs: "the set alone .24; the play adds +.03 (.01 to .05)". `goals` are
 * the play's, `difference` the play's less those of the set alone in the same trials.
 */
export function setAloneText(goals: Interval, difference: Interval): string {
  return `the set alone ${setAloneGoals(goals, difference)}; the play ${addsText(difference)}`;
}

function addsText(difference: Interval): string {
  const { mean, low, high } = difference;
  switch (signOf(difference)) {
    case 'up':
      return `adds ${differenceText(difference)}`;
    case 'down':
      return `costs ${goalsText(-mean)} (${goalsText(-high)} to ${goalsText(-low)})`;
    default:
      return `changes it by ${differenceText(difference)}, no sure difference`;
  }
}

/** Goals per chance of the set alone: the play's, which are known from more trials, less what it adds in those that both have run. */
export function setAloneGoals(goals: Interval, difference: Interval): string {
  return goalsText(Math.max(0, goals.mean - difference.mean));
}

// One sign for both ends where they share it, as in "+.04 (.02 to .06)".
function range(low: number, high: number): string {
  const text = (value: number): string => withoutZero(Math.abs(value).toFixed(2));
  if (low >= 0 && high >= 0) return `${text(low)} to ${text(high)}`;
  return `${signed(low)} to ${signed(high)}`;
}

function signed(value: number): string {
  const text = withoutZero(Math.abs(value).toFixed(2));
  if (text === '.00') return '.00';
  return `${value < 0 ? '−' : '+'}${text}`;
}

function withoutZero(text: string): string {
  return text.replace(/^0(?=\.)/, '');
}
