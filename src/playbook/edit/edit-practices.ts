import { limits } from '../limits.ts';
import type { Playbook, Practice, PracticeBlock } from '../schema.ts';
import { editedPlaybook, type PlaybookEdit, refused } from './edit-result.ts';
import { freshId } from './fresh-id.ts';

/** Keeps a practice plan behind the others, under an id of its own; the edit says which. */
export function addPractice(playbook: Playbook, plan: Omit<Practice, 'id'>): PlaybookEdit {
  const practices = playbook.practices ?? [];
  const { length } = plan.name.trim();
  if (length === 0 || length > limits.name)
    return refused(`A practice plan needs a name of at most ${limits.name} letters.`);
  if (practices.length >= limits.practices)
    return refused(`A playbook holds at most ${limits.practices} practice plans. Delete one that is over.`);
  const id = freshId(
    plan.name,
    practices.map((each) => each.id),
    'practice',
  );
  const kept: Practice = { ...plan, id, name: plan.name.trim() };
  return editedPlaybook({ ...playbook, practices: [...practices, kept] }, [], id);
}

/** Puts another plan in the place of one, under the same id. */
export function changePractice(playbook: Playbook, id: string, change: (practice: Practice) => Practice): PlaybookEdit {
  const practice = playbook.practices?.find((each) => each.id === id);
  if (practice === undefined) return noPractice(id);
  const changed = change(practice);
  if (changed === practice) return editedPlaybook(playbook);
  const practices = playbook.practices!.map((each) => (each === practice ? { ...changed, id } : each));
  return editedPlaybook({ ...playbook, practices });
}

export function removePractice(playbook: Playbook, id: string): PlaybookEdit {
  const practices = (playbook.practices ?? []).filter((each) => each.id !== id);
  if (practices.length === (playbook.practices ?? []).length) return noPractice(id);
  return editedPlaybook({ ...playbook, practices });
}

// The edits of one block. They are of the plan alone, so that a plan which is not kept yet is edited by the same.

/** The shortest block, minutes: as the schema has it. */
const shortestBlock = 0.5;

/** Minutes as the coach wants them, to the half minute and within what the file allows; from then on they stay when the rest is fitted. */
export function setBlockMinutes(practice: Practice, at: number, minutes: number): Practice {
  if (!Number.isFinite(minutes)) return practice;
  const kept = Math.min(limits.practiceMinutes, Math.max(shortestBlock, Math.round(minutes * 2) / 2));
  return withBlock(practice, at, (block) => ({ ...block, minutes: kept, fixed: true }));
}

/** How often it is run, a whole number within what the file allows. */
export function setBlockReps(practice: Practice, at: number, reps: number): Practice {
  if (!Number.isFinite(reps)) return practice;
  return withBlock(practice, at, (block) => ({
    ...block,
    reps: Math.min(limits.reps, Math.max(0, Math.round(reps))),
  }));
}

/** What the coach wants to remember; an empty text takes it out. */
export function noteBlock(practice: Practice, at: number, note: string): Practice {
  return withBlock(practice, at, ({ note: _, ...block }) =>
    note.trim() === '' ? block : { ...block, note: note.slice(0, limits.note) },
  );
}

/** The plan without the block. */
export function dropBlock(practice: Practice, at: number): Practice {
  if (practice.blocks[at] === undefined) return practice;
  return { ...practice, blocks: practice.blocks.filter((_, index) => index !== at) };
}

/** The block in another place of the order; nothing changes where it would leave the list. */
export function moveBlock(practice: Practice, from: number, to: number): Practice {
  const { blocks } = practice;
  const block = blocks[from];
  if (block === undefined || blocks[to] === undefined || from === to) return practice;
  const others = blocks.filter((_, index) => index !== from);
  return { ...practice, blocks: [...others.slice(0, to), block, ...others.slice(to)] };
}

function withBlock(practice: Practice, at: number, change: (block: PracticeBlock) => PracticeBlock): Practice {
  if (practice.blocks[at] === undefined) return practice;
  return { ...practice, blocks: practice.blocks.map((block, index) => (index === at ? change(block) : block)) };
}

function noPractice(id: string): ReturnType<typeof refused> {
  return refused(`The playbook has no practice plan "${id}" any more.`);
}
