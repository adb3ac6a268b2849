import { ballAfterSimultaneous, type RuleCode } from '../../engine/index.ts';
import type { BenchState } from './fold-game.ts';
import { arrivalSeconds, type Situation } from './situation.ts';

/** What to do now, in large letters, and what there is to know about it. */
export interface Advice {
  readonly what: string;
  readonly also: readonly string[];
  /** What should be looked up in the league's rulebook before it is relied on. */
  readonly confirm: readonly string[];
}

/** What else the advice goes by. */
export interface AdviceGround {
  readonly code: RuleCode;
  readonly state: BenchState;
  readonly periods: number;
  /** The called play has steps of its own for the last ten seconds; its name, else `null`. */
  readonly lastTenOf: string | null;
}

/** So little of the last period is "late", s (common practice, no source). */
const late = 120;
/** With this much or less there is no time for another round of the ball, s (common practice, no source). */
const noReset = 8;

/**
 * What a bench should say in a situation. The rules come from the rule code, unconfirmed ones are named; the rest is common practice of the trade without
 * a source.
 */
export function adviceFor(situation: Situation, ground: AdviceGround): Advice {
  const advice = adviceIn(situation, ground);
  const ball = ballWords(ground);
  return ball === ''
    ? advice
    : { ...advice, also: [ball, ...advice.also], confirm: [...advice.confirm, 'who gets the ball'] };
}

/** Whose ball it is after fouls at the same time, until play goes on; empty otherwise. */
function ballWords({ state: { boxEvents, clock } }: AdviceGround): string {
  const last = boxEvents.at(-1);
  if (last?.kind !== 'given' || !last.simultaneous || last.at !== clock.played) return '';
  const side = ballAfterSimultaneous(last.penalties);
  if (side === null) return 'As much time on both sides: the ball stays with who had it.';
  return side === 'us' ? 'Our ball: we have less time to serve.' : 'Their ball: they have less time to serve.';
}

function adviceIn(situation: Situation, ground: AdviceGround): Advice {
  switch (situation.kind) {
    case 'noManUp':
      return say('No team is a man up at this age.', ['The man who fouled is replaced. Send six and play on.']);
    case 'periodOver':
      return periodOver(situation);
    case 'flagDown':
      return situation.forUs ? freePlay(ground) : flagOnUs(ground);
    case 'manUp':
      return manUp(situation, ground);
    case 'manDown':
      return manDown(situation, ground);
    case 'arriving':
      return arriving(situation);
    case 'evenShort':
      return say(`${versus(situation.strength)}: nobody is extra.`, [
        'Run the settled offense, wide. No man-up call until one of theirs is more.',
      ]);
    case 'even':
      return say('Even sides.');
    default:
      return exhaustive(situation);
  }
}

function say(what: string, also: readonly string[] = [], confirm: readonly string[] = []): Advice {
  return { what, also, confirm };
}

function periodOver({ period, carried }: Extract<Situation, { kind: 'periodOver' }>): Advice {
  return say(`Period ${period} is over.`, carried.length > 0 ? ['Penalty time goes on in the next one.'] : []);
}

function freePlay({ code, state }: AdviceGround): Advice {
  const { endsOn, mayLeaveBox, goalWipesTechnical } = code.flagDown;
  const wipes = goalWipesTechnical.value
    ? 'A goal now wipes a technical foul; a personal foul is still served.'
    : 'A goal now does not wipe the foul: it is still served.';
  return say(
    'Free play: send the man behind to the crease, and shoot within 5 s.',
    [
      mayLeaveBox.value
        ? 'A lost ball costs nothing; it may leave the box.'
        : 'A lost ball costs nothing; keep it in the box.',
      `It ends on: ${endsOn.value.join('; ')}.`,
      wipes,
      ...(state.manUp === 'us' ? ['They are short already: this is another man.'] : []),
    ],
    [
      ...(endsOn.confirmed ? [] : ['what ends a flag']),
      ...(mayLeaveBox.confirmed ? [] : ['whether the ball may leave the box']),
      ...(goalWipesTechnical.confirmed ? [] : ['whether a goal wipes the foul']),
    ],
  );
}

function flagOnUs({ code }: AdviceGround): Advice {
  return say(
    'Flag on us: get the ball, or stop them clean. A second foul adds a man.',
    ['The man-down unit gets ready now.'],
    code.flagDown.endsOn.confirmed ? [] : ['what ends a flag'],
  );
}

type Short = Extract<Situation, { kind: 'manUp' | 'manDown' }>;

function manUp(situation: Short, ground: AdviceGround): Advice {
  const { strength, waiting } = situation;
  const { code, state } = ground;
  const also = [
    goalWords(situation, 'A goal'),
    ...(waiting > 0 ? [`${waiting} more of theirs ${waiting === 1 ? 'waits' : 'wait'} to serve.`] : []),
    ...shotClockWords(ground),
    ...(strength.attackers < 6 ? ['A play of six has a hole with a man of ours serving.'] : []),
  ];
  const confirm = code.penalties.goalReleases.confirmed ? [] : ['whether a goal ends a penalty'];
  return say(manUpWords(situation, ground, state), also, confirm);
}

function manUpWords(
  { strength, left: untilNext, edgeLeft: left }: Short,
  ground: AdviceGround,
  state: BenchState,
): string {
  const { lastTenOf } = ground;
  const more = strength.attackers - strength.defenders;
  if (isAheadLate(ground)) return 'Ahead late: keep the ball moving outside. Shoot only what is sure.';
  if (left <= noReset) return `${seconds(left)} left: no reset. Get a shot, with a man behind to back it up.`;
  if (left <= 10)
    return lastTenOf === null ? 'Last ten: one more look, then shoot.' : `Last ten: the end of ${lastTenOf} now.`;
  if (untilNext <= 10 && untilNext < left)
    return `One of theirs is back in ${seconds(untilNext)}, and we are still more: go on.`;
  if (more >= 2) return `${countWords(more)} up: slow down, load the crease, only shots from inside.`;
  if (state.afterTimeout) return 'Out of the timeout: say the call, everybody points to his spot.';
  if (left <= 30) return 'One good look: take it in 10 to 20 s, with a man behind to back it up.';
  return 'Set up, run the call: a good look in 10 to 20 s, then one more.';
}

/** What a goal changes for the short side. */
function goalWords({ kind, goalFrees, short }: Short, goal: string): string {
  if (goalFrees === 0)
    return `${goal} lets nobody back${kind === 'manUp' ? ': score, win the face-off, go again' : ''}.`;
  if (goalFrees === short) return `${goal} ends it.`;
  return `${goal} lets ${countWords(goalFrees).toLowerCase()} back; ${countWords(short - goalFrees).toLowerCase()} still ${short - goalFrees === 1 ? 'is' : 'are'} out.`;
}

function countWords(men: number): string {
  return men === 1 ? 'One' : men === 2 ? 'Two' : 'Three';
}

function shotClockWords({ code }: AdviceGround): readonly string[] {
  const clock = code.shotClock.value;
  if (clock === null) return [];
  const { threshold, atOrBelow, above } = clock.afterPenalty;
  const reset = atOrBelow === above ? `${above} s` : `${atOrBelow} s from ${threshold} or less, else ${above} s`;
  return [`The shot clock stays on; after the whistle it is set to ${reset}.`];
}

function isAheadLate({ state: { clock, score }, periods }: AdviceGround): boolean {
  return clock.period >= periods && clock.left <= late && score.us > score.them;
}

function manDown(situation: Short, { code }: AdviceGround): Advice {
  const { strength, left, waiting } = situation;
  const less = strength.attackers - strength.defenders;
  const what =
    left <= 10
      ? `${seconds(left)} until our man is back: stay inside, he comes in from the middle.`
      : `${countWords(less)} short: inside first, sticks in the lanes, no foul.`;
  return say(
    what,
    [
      goalWords(situation, 'A goal against us'),
      ...(waiting > 0 ? [`${waiting} more of ours ${waiting === 1 ? 'waits' : 'wait'} to serve.`] : []),
    ],
    code.penalties.goalReleases.confirmed ? [] : ['whether a goal ends a penalty'],
  );
}

function arriving({ forUs, ago }: Extract<Situation, { kind: 'arriving' }>): Advice {
  const { least, most } = arrivalSeconds;
  const still = Math.max(0, most - ago);
  return forUs
    ? say(`Their man is on. He needs ${least} to ${most} s: shoot now, or go on from the same set.`, [
        `At most ${seconds(still)} of the edge is left.`,
      ])
    : say(`Our man is on. He is there in ${least} to ${most} s: hold until then.`);
}

/** "6 v 5". */
export function versus({ attackers, defenders }: { readonly attackers: number; readonly defenders: number }): string {
  return `${attackers} v ${defenders}`;
}

function seconds(time: number): string {
  return `${Math.ceil(time)} s`;
}

function exhaustive(situation: never): never {
  throw new TypeError(`unknown situation: ${JSON.stringify(situation)}`);
}
