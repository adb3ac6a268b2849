import type { Interval } from '../engine/index.ts';
import { type Playbook, schemeName } from '../playbook/index.ts';
import { perChance, percent, withInterval } from '../render/index.ts';
import type { Belief, CallAdvice, MeasuredCalls } from '../teach/index.ts';
import { likeliestFirst } from '../teach/index.ts';
import { formatTable, tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

/** What a call sheet goes by. */
export interface CallSheet {
  readonly playbook: Playbook;
  /** Whom it is against, as it is written: "Copper Falls". */
  readonly against: string;
  readonly belief: Belief;
  readonly measured: MeasuredCalls;
  readonly advice: Extract<CallAdvice, { kind: 'measured' }>;
  readonly learnt: number;
  readonly trust: number;
}

/** What to call, on the terminal: what is believed, a row for each call, the mix in a sentence, and how to read it. */
export function callText(sheet: CallSheet): string {
  const { playbook, against, belief, measured, advice } = sheet;
  const believed = likeliestFirst(belief)
    .filter(([, share]) => share > 0)
    .map(([id, share]) => `${schemeName(playbook, id)} ${percent(share)}`);
  return [
    wrap(`What to call against ${against}, with a penalty of ${measured.penalty} s.`),
    wrap(`Believed: ${believed.join(', ')}.`),
    callTable(sheet),
    mixWords(sheet, advice),
    wrap(
      'How to read this. Goals: goals a man-up by what is believed, with the widest that the interval of 95 times in 100 can be. Call it: how often, so that it cannot be guessed; a call without a share is not in the mix.',
    ),
  ].join('\n\n');
}

function callTable({ playbook, measured, advice }: CallSheet): string {
  const name = (id: string): string => playbook.plays.find((play) => play.id === id)?.name ?? id;
  const rows = advice.calls.map(({ play, fromSide, goals, share }) => {
    const known = measured.calls.find((one) => one.play === play && one.fromSide === fromSide)!;
    const [best, worst] = bestAndWorst(known.goals_byScheme);
    const told = ([id, one]: readonly [string, Interval]): string =>
      `${schemeName(playbook, id)} ${perChance(one.mean)}`;
    return [name(play), withInterval(goals), share > 0 ? percent(share) : '', told(best), told(worst)];
  });
  return formatTable(
    [
      { title: 'call', align: 'left', flexible: true },
      { title: 'goals', align: 'right' },
      { title: 'call it', align: 'right' },
      { title: 'best against', align: 'left', flexible: true },
      { title: 'worst against', align: 'left', flexible: true },
    ],
    rows,
  );
}

function bestAndWorst(goals: Readonly<Record<string, Interval>>) {
  const all = Object.entries(goals).sort(([, one], [, other]) => other.mean - one.mean);
  return [all[0]!, all.at(-1)!] as const;
}

function mixWords({ learnt, trust }: CallSheet, { calls, asBelieved, atWorst }: CallSheet['advice']): string {
  const mixed = calls.filter(({ share }) => share > 0).length;
  const worst = `and at least ${perChance(atWorst)} whichever of these schemes they choose`;
  const what =
    mixed === 1
      ? `One call is the best by what was tried, of ${learnt} that they can run`
      : `Draw one of ${mixed} calls each time (at most ${learnt} that they can run), each as often as it may be the best`;
  return wrap(
    `${what}: ${perChance(asBelieved)} goals a man-up if they play what is believed, ${worst}. The belief is trusted ${percent(trust)}; the less, the more the calls are mixed.`,
  );
}

function wrap(words: string): string {
  return wrapParagraph(words, tableWidth);
}
