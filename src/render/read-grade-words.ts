import {
  bestThere,
  betterRead,
  type FakeGain,
  type Interval,
  type Play,
  type Point,
  type ReadGrade,
} from '../engine/index.ts';
import { percent } from './number-text.ts';
import { actionWords, readWords, seconds } from './play-words.ts';

/** How goals a chance are written: ".31" on the screen, "0.31" in the shell. */
export type GoalsText = (goals: number) => string;

/** What is said of one taught read, a whole sentence each. */
export interface GradeWords {
  /** "If WL is open, X feeds WL." */
  readonly read: string;
  readonly comes: string;
  /** What it earns or costs where it comes. */
  readonly verdict: string;
  /** What else there is to know of it: that it comes too late, what it costs without its cue, what would be better. None to four. */
  readonly notes: readonly string[];
}

/** A gain that is written as 0.00 is none. Goals a chance. */
const toldFrom = 0.005;
/** A read that shows so often only as he must throw is told to. */
const oftenLast = 0.5;

/** The words of a grade. `at` is where the carrier stands when he looks first, yards. */
export function gradeWords(play: Play, carrier: number, grade: ReadGrade, at: Point, text: GoalsText): GradeWords {
  return {
    read: sentence(readWords(play.reads[grade.read]!)),
    comes: comesWords(grade),
    verdict: verdictOf(grade, text),
    notes: [
      lateWords(grade, text),
      bestWords(play, carrier, grade, at, text),
      wrongWayWords(grade, text),
      betterWords(play, carrier, grade, at, text),
    ].filter((words) => words !== undefined),
  };
}

function comesWords({ comes, there }: ReadGrade): string {
  if (comes === 0) return 'He never sees it before the play has him throw.';
  const often = `He sees it in ${percent(comes)} of his possessions`;
  return there === null ? `${often}.` : `${often}, ${seconds(there.after)} after he can act on average.`;
}

function verdictOf({ there }: ReadGrade, text: GoalsText): string {
  if (there === null) return 'That is too seldom to tell what it is worth.';
  const { goals, goOn, earns } = there;
  const sums = `There it makes ${text(goals.mean)} goals a chance, and the play left alone ${text(goOn.mean)}`;
  if (earns.low >= toldFrom) return `${sums}: it earns ${range(earns, text)}.`;
  if (earns.high <= -toldFrom) return `${sums}: it costs ${range(opposite(earns), text)}.`;
  return `${sums}: no sure difference.`;
}

function lateWords({ there }: ReadGrade, text: GoalsText): string | undefined {
  if (there === null) return undefined;
  const { earlier, lastMoment } = there;
  if (earlier !== null && earlier.low >= toldFrom) {
    return `It comes too late: one look earlier the same is worth ${range(earlier, text)} more.`;
  }
  if (lastMoment < oftenLast) return undefined;
  return `In ${percent(lastMoment)} of these it shows only at his last look, as the play has him throw.`;
}

function bestWords(play: Play, carrier: number, grade: ReadGrade, at: Point, text: GoalsText): string | undefined {
  const best = bestThere(play, carrier, grade, at);
  if (best === null || grade.there === null || grade.there.short.low < toldFrom) return undefined;
  return `At the same cue the best is that ${actionWords(best)}: ${range(grade.there.short, text)} more.`;
}

function wrongWayWords({ wrongWay }: ReadGrade, text: GoalsText): string | undefined {
  if (wrongWay === null) return undefined;
  if (wrongWay.low >= toldFrom)
    return `Done at once without its cue it costs ${range(wrongWay, text)}: the cue matters.`;
  if (wrongWay.high <= -toldFrom) {
    return `Done at once without its cue it is worth ${range(opposite(wrongWay), text)} more than the play: it needs no cue.`;
  }
  return 'Done at once without its cue it is worth no sure difference: the cue hardly matters.';
}

function betterWords(play: Play, carrier: number, grade: ReadGrade, at: Point, text: GoalsText): string | undefined {
  const better = betterRead(play, carrier, grade, at);
  if (better === null || grade.better === null || grade.better.gain.low < toldFrom) return undefined;
  return `Better: ${readWords(better)}. Over all his possessions that is ${range(grade.better.gain, text)} more.`;
}

/** What fakes buy, in one sentence. Goals a chance. */
export function fakesWords(play: Play, fakes: readonly FakeGain[], text: GoalsText): string {
  const sure = fakes.filter(({ gain }) => gain.low >= toldFrom).sort((one, other) => other.gain.mean - one.gain.mean);
  const [best] = sure;
  if (best !== undefined) {
    return `Shown first to ${play.spots[best.toward]!.id}, the ball is worth ${range(best.gain, text)} goals a chance more.`;
  }
  const costs = fakes.filter(({ gain }) => gain.high <= -toldFrom).length;
  return costs === fakes.length
    ? 'Every fake costs more time here than it buys.'
    : 'No fake surely buys anything here.';
}

/** Whether a card for each scheme is worth it, in one sentence: `more` is what it brings over one for all. Goals a chance. */
export function cardEachWords(more: Interval, text: GoalsText): string {
  if (more.low >= toldFrom) {
    return `A card for each scheme brings ${range(more, text)} goals a chance more than one for all, if he knows the scheme.`;
  }
  return 'One card for all schemes does as well as one for each, as far as can be told.';
}

function range({ mean, low, high }: Interval, text: GoalsText): string {
  return `${text(mean)} (${text(low)} to ${text(high)})`;
}

function opposite({ mean, low, high }: Interval): Interval {
  return { mean: -mean, low: -high, high: -low };
}

function sentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}
