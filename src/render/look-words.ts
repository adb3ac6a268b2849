import { type LookReport, leastReplays } from '../engine/index.ts';
import { perChance, percent, tenth, withInterval } from './number-text.ts';

/** A look in a table's cell: "skip TR to WL", "shot by P". */
export function lookName(look: Pick<LookReport, 'kind' | 'from' | 'to'>): string {
  return look.kind === 'shot' ? `shot by ${look.from}` : `${look.kind} ${look.from} to ${look.to}`;
}

const dutyWords: Readonly<Record<string, string>> = {
  place: 'holding his place',
  ball: 'on the ball',
  man: 'playing him',
  split: 'splitting two',
  lane: 'in another lane',
  lock: 'locked on another man',
  pipe: 'on the pipe',
  front: 'fronting the crease man',
};

/** Who left a look open, in a table's cell: "ll split (0.4)" with the seconds he was late, "plan" when the scheme leaves that man. */
export function leftByCell({ defender, duty, lateBy }: LookReport['leftBy']): string {
  if (defender === null) return 'plan';
  return isLate(lateBy) ? `${defender} ${duty} (${tenth(lateBy)})` : `${defender} ${duty}`;
}

/** The sentence a coach can act on: what to look for, when, why it is there and what it is worth. */
export function lookSentence(scheme: string, look: LookReport): string {
  const when = `about ${tenth(look.opens)} s into the play, for ${tenth(Math.max(0, look.closes - look.opens))} s`;
  return (
    `Against ${scheme} look first for the ${lookName(look)}: it opens in ${percent(look.share)} of chances, ${when}, ` +
    `because ${whyWords(look)}. ${worthWords(look)}`
  );
}

function worthWords(look: LookReport): string {
  const arrive = `${percent(look.completion)} of the passes arrive`;
  const isShot = look.kind === 'shot';
  if (!isWorthKnown(look)) {
    const few = 'was taken too few times to say what it is worth.';
    return isShot ? `It ${few}` : `${arrive}. It ${few}`;
  }
  return (
    `${isShot ? 'Taking it' : `${arrive}, and taking it`} is worth ${perChance(look.value)} goals ` +
    `(${perChance(look.valueLow)}-${perChance(look.valueHigh)}) by the end of the chance.`
  );
}

/** Whether a look was replayed often enough for its worth to be told in words. */
export function isWorthKnown({ replays }: LookReport): boolean {
  return replays >= leastReplays;
}

/** What a look is worth, in a table's cell, with its interval; "few" when it was replayed too seldom. */
export function worthCell(look: LookReport): string {
  return isWorthKnown(look) ? withInterval({ mean: look.value, low: look.valueLow, high: look.valueHigh }) : 'few';
}

function whyWords({ leftBy }: LookReport): string {
  if (leftBy.defender === null) return 'the scheme leaves that man on purpose';
  const doing = dutyWords[leftBy.duty] ?? leftBy.duty;
  return isLate(leftBy.lateBy)
    ? `${leftBy.defender} is ${doing} and ${tenth(leftBy.lateBy)} s late`
    : `${leftBy.defender} is ${doing}`;
}

// One step of the simulation: less is not seen by anybody.
function isLate(seconds: number): boolean {
  return seconds > 0.05;
}
