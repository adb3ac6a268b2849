import { describe, expect, test } from 'vitest';
import { demoPlaybook, type Playbook, withoutNames } from '../../playbook/index.ts';
import {
  choiceFor,
  choose,
  chooseAll,
  isSettled,
  type MergePlan,
  mergedPlaybook,
  planMerge,
  planWords,
} from './merge-choices.ts';

const renamed = (name: string, index = 0): Playbook => ({
  ...demoPlaybook,
  plays: demoPlaybook.plays.map((play, i) => (i === index ? { ...play, name } : play)),
});
const regraded = (playbook: Playbook, hand: 'left' | 'right'): Playbook => ({
  ...playbook,
  team: {
    ...playbook.team,
    roster: playbook.team.roster.map((player) => (player.number === 22 ? { ...player, hand } : player)),
  },
});
/** Both renamed a play and changed a player. */
const disputed = (): MergePlan =>
  planMerge(regraded(renamed('Mine'), 'left'), regraded(renamed('Theirs'), 'right'), demoPlaybook);
const names = (playbook: Playbook) => playbook.plays.map(({ name }) => name);

describe('choosing in a merge', () => {
  test('begins with mine, and says so', () => {
    const plan = disputed();
    expect(plan.conflicts.map((conflict) => choiceFor(plan, conflict))).toEqual(['mine', 'mine']);
    expect(planWords(plan)).toBe('Nothing comes in by itself. You decide: 2 as yours.');
    expect(mergedPlaybook(plan)).toEqual(plan.mine);
  });

  test('one choice changes one part', () => {
    const plan = disputed();
    const chosen = choose(plan, plan.conflicts.find(({ kind }) => kind === 'play')!, 'theirs');
    expect(mergedPlaybook(chosen)).toEqual(regraded(renamed('Theirs'), 'left'));
    expect(planWords(chosen)).toContain('1 as yours, 1 as theirs');
    expect(mergedPlaybook(plan)).toEqual(plan.mine);
  });

  test('all at once: theirs, or both where that can be', () => {
    expect(mergedPlaybook(chooseAll(disputed(), 'theirs'))).toEqual(disputed().theirs);
    const both = chooseAll(chooseAll(disputed(), 'theirs'), 'both');
    expect(names(mergedPlaybook(both)).slice(0, 2)).toEqual(['Mine', 'Theirs (2)']);
    // Two players cannot wear one number: what was chosen before stays.
    expect(mergedPlaybook(both).team).toEqual(disputed().theirs.team);
    expect(planWords(both)).toContain('1 as theirs, 1 kept both ways');
  });

  test('what only they changed comes in without a question', () => {
    const plan = planMerge(renamed('Mine', 0), renamed('Theirs', 1), demoPlaybook);
    expect(plan.conflicts).toEqual([]);
    expect(planWords(plan)).toBe('1 change comes in by itself. There is nothing to decide.');
    expect(names(mergedPlaybook(plan)).slice(0, 2)).toEqual(['Mine', 'Theirs']);
  });

  test('a copy that says nothing new is settled', () => {
    const plan = planMerge(demoPlaybook, structuredClone(demoPlaybook), undefined);
    expect(isSettled(plan)).toBe(true);
    expect(planWords(plan)).toBe('This file says nothing that your playbook does not have.');
  });

  test('numbers in place of names never take a name away', () => {
    const mine = regraded(demoPlaybook, 'left');
    const plan = planMerge(mine, regraded(withoutNames(mine), 'right'), undefined);
    expect(plan.conflicts.map(({ name }) => name)).toEqual(['Finn Abernathy']);
    expect(mergedPlaybook(chooseAll(plan, 'theirs'))).toEqual(regraded(demoPlaybook, 'right'));
  });
});
