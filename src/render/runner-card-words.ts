import type { Interval, RunnerCard, RunnerCue, RunnerStudy, SpotId, ValuedTime } from '../engine/index.ts';
import { count, perChance, percent, tenth } from './number-text.ts';
import { actionWords } from './play-words.ts';

/** A card for a run as it is said to a player, a whole sentence each. */
export interface RunnerCardWords {
  /** "WR sneaks in when his man moves to the ball and P can throw, or when nobody stands where he goes."; without a read "WR sneaks in 0.4 s after the call." */
  readonly goes: string;
  /** "Otherwise he goes 1.2 s after the call."; `null` without a read. */
  readonly otherwise: string | null;
}

/** The words of a card for one run. */
export function runnerCardWords({ runner, run, goesWhen, latest }: RunnerCard): RunnerCardWords {
  const runs = actionWords({ kind: 'run', run, by: runner, path: [], go: 'now' });
  if (goesWhen.length === 0) return { goes: `${runs} ${afterTheCall(latest)}, whatever he sees.`, otherwise: null };
  const reads = goesWhen.map((cues) => `when ${runnerCueWords(cues)}`);
  return { goes: `${runs} ${reads.join(', or ')}.`, otherwise: `Otherwise he goes ${afterTheCall(latest)}.` };
}

/** "at once", "0.4 s after the call". Seconds. */
export function afterTheCall(after: number): string {
  return after === 0 ? 'at once' : `${tenth(after)} s after the call`;
}

/** Cues that hold together, as a clause: "his man moves to the ball and P can throw". */
export function runnerCueWords(cues: readonly RunnerCue<SpotId>[]): string {
  const passer = cues.find((cue) => cue.kind === 'ballIsWith');
  // "P has the ball and the man with the ball can throw" is said in three words.
  if (passer?.kind === 'ballIsWith' && cues.some(({ kind }) => kind === 'passerIsReady')) {
    const rest = cues.filter(({ kind }) => kind !== 'ballIsWith' && kind !== 'passerIsReady');
    return [...rest.map(cueWords), `${passer.who} can throw`].join(' and ');
  }
  return cues.map(cueWords).join(' and ');
}

function cueWords(cue: RunnerCue<SpotId>): string {
  switch (cue.kind) {
    case 'manGoesToBall':
      return 'his man moves to the ball';
    case 'manLooksAway':
      return 'his man cannot watch him and the ball at once';
    case 'manHasLeft':
      return 'no defender is near him';
    case 'placeIsOpen':
      return 'nobody stands where he goes';
    case 'laneIsOpen':
      return 'the lane to where he goes is open';
    case 'wayIsOpen':
      return 'nobody stands in his way';
    case 'passerIsReady':
      return 'the man with the ball can throw';
    case 'ballIsInAir':
      return 'the ball is in the air';
    case 'ballIsWith':
      return `${cue.who} has the ball`;
    default:
      return exhaustive(cue);
  }
}

/** How a man can time a run, as the rows of a table are called. */
export const runWayNames = {
  goOn: 'as the play has it',
  atOnce: 'at once',
  best: 'the best decisions that are known',
} as const;

/** The row of the best card of so many reads, which may have turned out to need fewer. */
export function runCardName(reads: number, { list }: RunnerStudy['cards'][number], latest: number): string {
  if (reads === 0) return latest === 0 ? 'the best time: at once' : `the best time: ${tenth(latest)} s`;
  const card = reads === 1 ? 'a card of 1 read' : `a card of ${reads} reads`;
  return list.rules.length < reads ? `${card} is no better` : card;
}

/** What the figures of one run rest on, and how it goes as the play has it. */
export function runBasisWords({ comes, learntFrom, measuredIn, goes, wentAfter }: RunnerStudy): string {
  const when = wentAfter < 0.05 ? 'at once' : `${tenth(wentAfter)} s after the call on average`;
  const alone = goes < 0.995 ? `in ${percent(goes)} of these, ${when}` : when;
  return (
    `The play calls for this run in ${percent(comes)} of man-ups. As the play has it he goes ${alone}. ` +
    `Learnt from ${count(learntFrom)} of these man-ups, measured in ${count(measuredIn)} others.`
  );
}

/** A gain that is written as 0.00 is none. Goals a chance. */
const toldFrom = 0.005;

/** What can be said of when to go: what the card brings, and from when on he is too late. */
export function whenToGoWords(study: RunnerStudy, card: { readonly gain: Interval }): string {
  const late = tooLate(study.byTime);
  const cost =
    late === undefined
      ? neverTooLateWords(study.byTime)
      : `Going ${late.after === 0 ? 'at once' : `${tenth(late.after)} s after the call`} or later surely costs ` +
        `goals: ${perChance(-late.gain.mean)} a chance there (${perChance(-late.gain.high)} to ${perChance(-late.gain.low)}).`;
  return `${cardGainWords(card.gain)} ${cost}`;
}

function neverTooLateWords(byTime: readonly ValuedTime[]): string {
  if (!byTime.some(surelyCosts)) return 'No fixed time surely costs the play goals.';
  return 'Some fixed times surely cost the play goals, though the latest does not.';
}

/** The first time from which on every time surely costs something. */
function tooLate(byTime: readonly ValuedTime[]): ValuedTime | undefined {
  const lastGood = byTime.reduce((last, time, at) => (surelyCosts(time) ? last : at), -1);
  return byTime[lastGood + 1];
}

function surelyCosts({ gain }: ValuedTime): boolean {
  return gain.high < -toldFrom;
}

function cardGainWords({ mean, low, high }: Interval): string {
  if (low === 0 && high === 0) return 'This is what the play has him do anyway: nothing better was found.';
  if (low >= toldFrom) {
    return `This card brings ${perChance(mean)} goals a chance more than the play (${perChance(low)} to ${perChance(high)}).`;
  }
  if (high <= -toldFrom) return 'This card does worse than the play: let him go as the play has it.';
  return 'Whether this card does better than the play cannot be told from luck: until it can, let him go as the play has it.';
}

/** Why nothing is told of a run, as a clause. */
export function hardlyCalledWords(runner: SpotId): string {
  return `the play hardly ever comes to this run, so there is nothing for ${runner} to time`;
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown: ${JSON.stringify(value)}`);
}
