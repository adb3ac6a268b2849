import {
  conflictId,
  type MergeChoice,
  type MergeConflict,
  mergePlaybooks,
  type Playbook,
} from '../../playbook/index.ts';
import { withNamesBack } from './names-back.ts';
import { type PlaybookChanges, playbookChanges } from './playbook-changes.ts';

/** A merge that is being decided. Nothing of it is in the playbook until it is taken. */
export interface MergePlan {
  readonly mine: Playbook;
  /** With its names back, where numbers stood for them. */
  readonly theirs: Playbook;
  readonly base: Playbook | undefined;
  /** Mine where nothing was chosen. */
  readonly choices: ReadonlyMap<string, MergeChoice>;
  readonly conflicts: readonly MergeConflict[];
  /** What comes in without a question: what only they changed. */
  readonly comesIn: PlaybookChanges;
}

export function planMerge(mine: Playbook, copy: Playbook, base: Playbook | undefined): MergePlan {
  const theirs = withNamesBack(copy, base ?? mine);
  const { merged, conflicts } = mergePlaybooks(base, mine, theirs);
  return { mine, theirs, base, choices: new Map(), conflicts, comesIn: playbookChanges(mine, merged) };
}

export function choiceFor({ choices }: MergePlan, conflict: MergeConflict): MergeChoice {
  return choices.get(conflictId(conflict)) ?? 'mine';
}

/** The plan with another choice for one conflict; the same plan when it does not offer that. */
export function choose(plan: MergePlan, conflict: MergeConflict, choice: MergeChoice): MergePlan {
  if (!conflict.choices.includes(choice)) return plan;
  return { ...plan, choices: new Map(plan.choices).set(conflictId(conflict), choice) };
}

/** The plan with one choice for all; where both cannot be had, what is chosen stays. */
export function chooseAll(plan: MergePlan, choice: MergeChoice): MergePlan {
  return plan.conflicts.reduce((all, conflict) => choose(all, conflict, choice), plan);
}

/** The playbook that follows from what is chosen. */
export function mergedPlaybook({ base, mine, theirs, choices }: MergePlan): Playbook {
  return mergePlaybooks(base, mine, theirs, choices).merged;
}

/** Whether the plan has nothing to take and nothing to ask. */
export function isSettled({ conflicts, comesIn }: MergePlan): boolean {
  return conflicts.length === 0 && comesIn.parts.length === 0 && !comesIn.isReordered;
}

/** What will happen, as sentences: how much comes in, and what is chosen. */
export function planWords(plan: MergePlan): string {
  const { conflicts, comesIn } = plan;
  if (isSettled(plan)) return 'This file says nothing that your playbook does not have.';
  const chosen = (choice: MergeChoice): number => conflicts.filter((one) => choiceFor(plan, one) === choice).length;
  const decided = (['mine', 'theirs', 'both'] as const)
    .filter((choice) => chosen(choice) > 0)
    .map((choice) => `${chosen(choice)} ${choiceWords[choice]}`);
  const asked = conflicts.length === 0 ? 'There is nothing to decide.' : `You decide: ${decided.join(', ')}.`;
  return `${newsWords(comesIn.parts.length)} ${asked}`;
}

const choiceWords: Readonly<Record<MergeChoice, string>> = {
  mine: 'as yours',
  theirs: 'as theirs',
  both: 'kept both ways',
};

function newsWords(count: number): string {
  if (count === 0) return 'Nothing comes in by itself.';
  return count === 1 ? '1 change comes in by itself.' : `${count} changes come in by themselves.`;
}
