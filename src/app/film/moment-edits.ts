import type { Point } from '../../engine/index.ts';
import { type Chance, type ChanceMark, limits } from '../../playbook/index.ts';
import { sameFrame } from './camera-marks.ts';
import type { Marked, MarkOrder } from './film-tool.ts';

/** Either the man-up after an edit, or why it stays as it is, as a sentence. */
export type MomentEdit =
  | { readonly kind: 'edited'; readonly chance: Chance }
  | { readonly kind: 'refused'; readonly reason: string };

/** Where a mark comes from. */
export type MarkedBy = Exclude<ChanceMark['by'], 'tick'>;

/** The moment of a man-up that was marked at a time; its place in the list, or -1. */
export function momentAt(chance: Chance, time: number): number {
  return momentsOf(chance).findIndex((mark) => Math.abs(mark.time - time) <= sameFrame);
}

/** The moments of a man-up in the order of their times. Ticks without places stand at its beginning. */
export function momentsOf({ marks }: Chance): readonly ChanceMark[] {
  return marks ?? [];
}

/**
 * Sets somebody at a time, or moves him. The ball comes first: it begins a moment that is not there yet. Places to the tenth of a yard, times to the hundredth
 * of a second.
 */
export function markMan(chance: Chance, time: number, order: MarkOrder, by: MarkedBy): MomentEdit {
  const index = momentAt(chance, time);
  const ticked = momentsOf(chance)[index];
  // Who marks where men are at a moment that was only ticked has seen it.
  const mark = ticked?.by === 'tick' ? { ...ticked, by } : ticked;
  const at = kept(order.at);
  if (Math.abs(at[0]) > farthest || Math.abs(at[1]) > farthest)
    return refused('This lies off the field. If it is on the field in the film, look at the marks of the lines.');
  if (mark === undefined) {
    if (order.kind !== 'set' || order.what !== 'ball')
      return refused('A moment begins with the ball: set where the ball is, then the defenders.');
    return addMoment(chance, { time: rounded(time, 100), ball: at, defenders: [], by });
  }
  if (order.kind === 'move') return edited(withMark(chance, index, movedMan(mark, order.who, at)));
  switch (order.what) {
    case 'ball': {
      const { holder: _, ...rest } = mark;
      return edited(withMark(chance, index, { ...rest, ball: at }));
    }
    case 'defender': {
      if (mark.defenders.length >= mostOfOneSide)
        return refused(
          `${mark.defenders.length} defenders are marked, and no more than ${mostOfOneSide} can be on the field beside the goalkeeper. Drag one to where this one is, or take one out.`,
        );
      const { names, ...rest } = mark;
      // Names go with all of them or with none.
      return edited(withMark(chance, index, { ...rest, defenders: [...mark.defenders, at] }));
    }
    case 'attacker':
      if ((mark.offense ?? []).length >= mostOfOneSide)
        return refused(
          `${mark.offense?.length} attackers are marked, and no more than ${mostOfOneSide} can be here. Drag one to where this one is, or take one out.`,
        );
      return edited(withMark(chance, index, { ...mark, offense: [...(mark.offense ?? []), at] }));
    default:
      return exhaustive(order.what);
  }
}

/** Takes a man out of a moment; with the ball goes the whole moment. */
export function unmarkMan(chance: Chance, time: number, who: Marked): MomentEdit {
  const index = momentAt(chance, time);
  const mark = momentsOf(chance)[index];
  if (mark === undefined) return refused('There is no moment at this time any more.');
  switch (who.kind) {
    case 'ball':
      return edited(withMarks(chance, without(momentsOf(chance), index)));
    case 'defender': {
      const { names, ...rest } = mark;
      const left = names === undefined ? [] : without(names, who.at);
      const next = { ...rest, defenders: without(mark.defenders, who.at), ...(left.length > 0 && { names: left }) };
      return edited(withMark(chance, index, next));
    }
    case 'attacker': {
      const { offense, ...rest } = mark;
      const left = without(offense ?? [], who.at);
      return edited(withMark(chance, index, left.length === 0 ? rest : { ...rest, offense: left }));
    }
    default:
      return exhaustive(who);
  }
}

/** Puts a moment where its time belongs. */
export function addMoment(chance: Chance, mark: ChanceMark): MomentEdit {
  if (momentsOf(chance).length >= limits.marks)
    return refused(`A man-up holds at most ${limits.marks} moments. Take one out first.`);
  if (!(mark.time >= 0 && mark.time <= longest))
    return refused('This is before the man-up begins, or more than ten minutes after it. Say where it begins first.');
  return edited(withMarks(chance, [...momentsOf(chance), mark]));
}

/** Gives a moment another time. */
export function retimeMoment(chance: Chance, from: number, to: number): MomentEdit {
  const index = momentAt(chance, from);
  const mark = momentsOf(chance)[index];
  if (mark === undefined) return refused('There is no moment at this time any more.');
  if (!(to >= 0 && to <= longest)) return refused('A moment lies within ten minutes of the beginning of its man-up.');
  const taken = momentAt(chance, to);
  if (taken >= 0 && taken !== index) return refused(`There is a moment at ${to} s already.`);
  return edited(withMark(chance, index, { ...mark, time: rounded(to, 100) }));
}

/** Everybody of a moment once more at a later time, to be dragged to where they are then. */
export function repeatMoment(chance: Chance, from: number, to: number): MomentEdit {
  const mark = momentsOf(chance)[momentAt(chance, from)];
  if (mark === undefined) return refused('There is no moment at this time any more.');
  if (momentAt(chance, to) >= 0) return refused('There is a moment at that time already.');
  const { cues: _, ...rest } = mark;
  return addMoment(chance, { ...rest, time: rounded(to, 100) });
}

/** What was ticked of a man-up, all its moments together. */
export function cuesOf(chance: Chance): readonly string[] {
  return [...new Set(momentsOf(chance).flatMap(({ cues }) => cues ?? []))];
}

/**
 * Ticks, kept with the first moment, or with one of their own at the start, the ball with `holder`, where nothing was marked. None at all take that one out again.
 */
export function setCues(chance: Chance, cues: readonly string[], holder: string): MomentEdit {
  if (cues.length > limits.tags) return refused(`At most ${limits.tags} signs can be ticked of one man-up.`);
  const cleared = momentsOf(chance).flatMap(({ cues: _, ...mark }) => (mark.by === 'tick' ? [] : [mark]));
  const [first, ...others] = cleared;
  if (cues.length === 0) return edited(withMarks(chance, cleared));
  const ticked: ChanceMark = { time: 0, holder, defenders: [], by: 'tick', cues: [...cues] };
  return edited(withMarks(chance, first === undefined ? [ticked] : [{ ...first, cues: [...cues] }, ...others]));
}

/** Men of one side who can be on the field at this end, the goalkeeper not counted. */
export const mostOfOneSide = 6;
/** The farthest from the middle of the goal line that somebody can be marked along each axis, yards: beyond midfield and sidelines. */
const farthest = 60;
/** The longest man-up, s. */
const longest = 600;

function movedMan(mark: ChanceMark, who: Marked, at: [number, number]): ChanceMark {
  switch (who.kind) {
    case 'ball': {
      const { holder: _, ...rest } = mark;
      return { ...rest, ball: at };
    }
    case 'defender':
      return { ...mark, defenders: mark.defenders.map((place, index) => (index === who.at ? at : place)) };
    case 'attacker':
      return { ...mark, offense: (mark.offense ?? []).map((place, index) => (index === who.at ? at : place)) };
    default:
      return exhaustive(who);
  }
}

function withMark(chance: Chance, index: number, mark: ChanceMark): Chance {
  return withMarks(
    chance,
    momentsOf(chance).map((one, at) => (at === index ? mark : one)),
  );
}

function withMarks(chance: Chance, marks: readonly ChanceMark[]): Chance {
  // What marks said that have changed since is taken anew, or not at all.
  const { marks: _, byMarks: __, ...rest } = chance;
  if (marks.length === 0) return rest;
  return { ...rest, marks: [...marks].sort((one, other) => one.time - other.time) };
}

function without<T>(list: readonly T[], at: number): T[] {
  return list.filter((_, index) => index !== at);
}

function kept({ x, y }: Point): [number, number] {
  return [rounded(x, 10), rounded(y, 10)];
}

function rounded(value: number, by: number): number {
  return Math.round(value * by) / by;
}

function edited(chance: Chance): MomentEdit {
  return { kind: 'edited', chance };
}

function refused(reason: string): MomentEdit {
  return { kind: 'refused', reason };
}

function exhaustive(value: never): never {
  throw new TypeError(`unknown kind: ${JSON.stringify(value)}`);
}
