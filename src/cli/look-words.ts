import type { LookReport } from '../engine/index.ts';
import { perChance, percent, tenth } from './number-text.ts';

/** A look in a table's cell: "skip TR to WL", "shot by P". */
export function lookName(look: LookReport): string {
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
  const arrives =
    look.kind === 'shot' ? 'Taking it' : `${percent(look.completion)} of the passes arrive, and taking it`;
  return (
    `Against ${scheme} look first for the ${lookName(look)}: it opens in ${percent(look.share)} of chances, ${when}, ` +
    `because ${whyWords(look)}. ${arrives} is worth ${perChance(look.value)} goals ` +
    `(${perChance(look.valueLow)}-${perChance(look.valueHigh)}) by the end of the chance.`
  );
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
