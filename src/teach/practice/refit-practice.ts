import type { Practice, PracticeBlock } from '../../playbook/index.ts';
import { apportion } from './apportion.ts';
import { practiceTimes, repsIn } from './practice-times.ts';

type Plan = Omit<Practice, 'id'>;

/** Minutes that the blocks take in all. */
export function minutesTaken({ blocks }: Pick<Practice, 'blocks'>): number {
  return blocks.reduce((sum, { minutes }) => sum + minutes, 0);
}

/**
 * The plan with its other blocks fitted to the time that is left by those whose minutes were set by hand: each its least first, then as it was beside the others. Blocks
 * stay in their order and none is dropped. `undefined` when not even the least of all fits.
 */
export function refitPractice<Of extends Plan>(practice: Of): Of | undefined {
  const { blocks } = practice;
  const fixed = minutesTaken({ blocks: blocks.filter((block) => block.fixed === true) });
  const free = blocks.filter((block) => block.fixed !== true);
  const halves = Math.floor(2 * (practice.minutes - fixed));
  const least = free.reduce((sum, { kind }) => sum + leastHalves(kind), 0);
  if (halves < least || halves < 0) return undefined;
  const got = apportion(
    halves,
    free.map(({ kind, minutes }) => ({
      worth: minutes * practiceTimes[kind].share,
      least: leastHalves(kind),
      most: 2 * practiceTimes[kind].most,
    })),
  );
  const minutes_byBlock = new Map(free.map((block, at) => [block, got[at]! / 2]));
  const fitted = blocks.map((block) => {
    const minutes = minutes_byBlock.get(block);
    return minutes === undefined ? block : lasting(block, minutes);
  });
  return { ...practice, blocks: fitted };
}

/** A block of so many minutes, with the reps that fit into them, shared out as they were. */
export function lasting(block: PracticeBlock, minutes: number): PracticeBlock {
  const reps = repsIn(block.kind, minutes);
  const { reps: _, ...rest } = block;
  const timed = { ...rest, minutes, ...(reps > 0 && { reps }) };
  return block.runs === undefined || reps === 0 ? timed : { ...timed, runs: sharedAnew(block.runs, reps) };
}

/** A block of so many reps in the same time, shared out as they were. */
export function repeated(block: PracticeBlock, reps: number): PracticeBlock {
  const { reps: _, ...rest } = block;
  if (!Number.isInteger(reps) || reps < 1) return block;
  return block.runs === undefined ? { ...rest, reps } : { ...rest, reps, runs: sharedAnew(block.runs, reps) };
}

function sharedAnew(runs: NonNullable<PracticeBlock['runs']>, reps: number): NonNullable<PracticeBlock['runs']> {
  const got = apportion(
    reps,
    runs.map((run) => ({ worth: run.reps, least: 1 })),
  );
  return runs.map((run, at) => ({ ...run, reps: got[at]! })).filter((run) => run.reps > 0);
}

function leastHalves(kind: PracticeBlock['kind']): number {
  return 2 * practiceTimes[kind].least;
}
