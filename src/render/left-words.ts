import { dutyNames, type LookReport, type LookWindow, type Trace } from '../engine/index.ts';
import { tenth } from './number-text.ts';
import { type DutyFrame, frameAt } from './trace-frame.ts';
import { attackerName, defenderName, type TraceNames } from './trace-names.ts';

/** Who is open, and who should have been there. */
export type LeftMan = Pick<LookWindow, 'to' | 'leftBy' | 'duty' | 'lateBy'>;

/** One step of the simulation: less is not seen by anybody. Seconds. */
const seenLate = 0.05;
/** How far back it is asked who had a man before he was left, s: a coach does not look for the cause further back. */
const hadWithin = 3;

/**
 * The sentence for a man who is open in one trial: "WR was left: lr went to the ball and nobody took him." `moment` is the trace and the
 * time in it at which he came open: with it, who had him before is told when nobody has him now.
 */
export function leftWords(
  left: LeftMan,
  names: TraceNames,
  moment?: { readonly trace: Trace; readonly time: number },
): string {
  const man = attackerName(names, left.to);
  if (left.leftBy >= 0)
    return coveredWords(man, defenderName(names, left.leftBy), dutyNames[left.duty] ?? '', left.lateBy, 'their');
  const gone = moment === undefined ? undefined : whoWent(moment.trace, moment.time, left.to);
  if (gone === undefined) return nobodysWords(man);
  return `${man} was left: ${defenderName(names, gone.defender)} ${wentWords(gone.now, names)} and nobody took him.`;
}

/** The same for a look that our own man-down unit gives up: the usual cause over many trials. */
export function lookLeftWords({ to, leftBy }: Pick<LookReport, 'to' | 'leftBy'>): string {
  return leftBy.defender === null
    ? nobodysWords(to)
    : coveredWords(to, leftBy.defender, leftBy.duty, leftBy.lateBy, 'our');
}

function nobodysWords(man: string): string {
  return `${man} was left: the scheme gives him to nobody.`;
}

function coveredWords(man: string, defender: string, duty: string, lateBy: number, side: 'our' | 'their'): string {
  // "C was open although c had him" is read twice: where only the size of a letter tells them apart, it is said whose he is.
  const whose = defender.toLowerCase() === man.toLowerCase() ? `${side} ` : '';
  const had = `${whose}${defender} ${hadWords[duty] ?? 'had him'}`;
  if (lateBy <= seenLate) return `${man} was open although ${had} and was in time.`;
  return `${man} was left: ${had} and came ${tenth(lateBy)} s late.`;
}

/** What the man did who should have been there, by his duty, which names the open man. */
const hadWords: Readonly<Record<string, string>> = {
  ball: 'had him once the ball was with him',
  man: 'had him',
  split: 'split him and another',
  lane: 'stood in the lane to him',
  lock: 'was locked on him',
  pipe: 'guarded the pipe',
  front: 'fronted him',
};

interface Gone {
  readonly defender: number;
  /** What he does instead. */
  readonly now: DutyFrame;
}

// The last defender who was asked to see to the man, and what he is asked to do now.
function whoWent(trace: Trace, time: number, man: number): Gone | undefined {
  const now = frameAt(trace, time).duties;
  for (let back = time - trace.step; back >= Math.max(0, time - hadWithin); back -= trace.step) {
    const defender = frameAt(trace, back).duties.findIndex((one) => isOn(one, man));
    const instead = now[defender];
    if (instead !== undefined && !isOn(instead, man)) return { defender, now: instead };
  }
  return undefined;
}

function isOn({ duty, a, b }: DutyFrame, man: number): boolean {
  return duty !== 'place' && (a === man || (duty === 'split' && b === man));
}

function wentWords({ duty, a, b }: DutyFrame, names: TraceNames): string {
  const [first, second] = [attackerName(names, a), attackerName(names, b)];
  switch (duty) {
    case 'ball':
      return 'went to the ball';
    case 'man':
      return `went to ${first}`;
    case 'split':
      return b < 0 ? `sagged off ${first}` : `went to split ${first} and ${second}`;
    case 'lane':
      return `went into the lane to ${first}`;
    case 'lock':
      return `locked on ${first}`;
    case 'pipe':
      return 'went to the pipe';
    case 'front':
      return `went to front ${first}`;
    case 'place':
      return 'went to his place';
    default:
      throw new TypeError(`unknown duty: ${duty} (expected ${dutyNames.join(', ')})`);
  }
}
