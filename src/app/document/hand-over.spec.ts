import { describe, expect, test } from 'vitest';
import { conflictId, demoPlaybook, mergePlaybooks, type Playbook, parsePlaybook } from '../../playbook/index.ts';
import type { PlaybookStore } from './playbook-store.ts';
import { device, playNames, removePlay, renamePlay, renameTeam, tab } from './tabs.fixture.ts';

const read = (text: string): Playbook => parsePlaybook(text).value!;

/** One gets the other's file and merges it by what both have in common; gives the conflicts, of which mine is taken. */
async function receive(store: PlaybookStore, theirs: Playbook): Promise<readonly string[]> {
  const { merged, conflicts } = mergePlaybooks(await store.commonBase(theirs), store.playbook, theirs);
  await store.replace('Merge a file', merged, 'merged', theirs);
  return conflicts.map(conflictId);
}

/** A coach, and an assistant on another device who opened the coach's file. */
async function coachAndAssistant() {
  const coach = await tab(device());
  const assistant = await tab(device());
  await assistant.replace('Open a file', read(coach.handOut()));
  return { coach, assistant };
}

const edit = (store: PlaybookStore, change: (playbook: Playbook) => Playbook) => store.edit('Edit', change);

describe('a file that goes to an assistant and comes back', () => {
  test('is merged without a question when each changed something else', async () => {
    const { coach, assistant } = await coachAndAssistant();
    edit(coach, renamePlay(0, 'Coach'));
    edit(assistant, renamePlay(1, 'Assistant'));
    edit(assistant, removePlay(2));
    expect(await receive(coach, read(assistant.handOut()))).toEqual([]);
    expect(playNames(coach)).toEqual(['Coach', 'Assistant']);
  });

  test('is asked about where both changed the same', async () => {
    const { coach, assistant } = await coachAndAssistant();
    edit(coach, renamePlay(0, 'Coach'));
    edit(assistant, renamePlay(0, 'Assistant'));
    expect(await receive(coach, read(assistant.handOut()))).toEqual([`play ${coach.playbook.plays[0]!.id}`]);
  });

  test('goes to and fro, and never takes back what one of them changed since', async () => {
    const { coach, assistant } = await coachAndAssistant();
    edit(assistant, renamePlay(1, 'A1'));
    await receive(coach, read(assistant.handOut()));
    edit(coach, renamePlay(0, 'C1'));
    // He has not seen C1, and goes on from his own.
    edit(assistant, renamePlay(1, 'A2'));
    expect(await receive(coach, read(assistant.handOut()))).toEqual([]);
    expect(playNames(coach).slice(0, 2)).toEqual(['C1', 'A2']);
    expect(await receive(assistant, read(coach.handOut()))).toEqual([]);
    expect(assistant.playbook.plays).toEqual(coach.playbook.plays);
  });

  test('an older file is not taken for a newer one: what I changed after I handed it out stays', async () => {
    const { coach, assistant } = await coachAndAssistant();
    edit(coach, renamePlay(0, 'After'));
    // A second file, which the assistant never opens.
    coach.handOut();
    edit(coach, renameTeam('Later'));
    // Merged by that second file, the assistant's old play would count as his change.
    const second = await coach.version((await coach.versions()).find(({ reason }) => reason === 'exported')!.id);
    const { merged } = mergePlaybooks(second, coach.playbook, read(assistant.handOut()));
    expect(merged.plays[0]!.name).not.toBe('After');
    expect(await receive(coach, read(assistant.handOut()))).toEqual([]);
    expect(playNames(coach)[0]).toBe('After');
    expect(coach.playbook.team.name).toBe('Later');
  });

  test('a file that was changed by hand, and so has the mark of another, does not take that one’s place', async () => {
    const coach = await tab(device());
    const file = read(coach.handOut());
    await coach.replace('Open a file', renamePlay(0, 'By hand')(file));
    // Merged by what was changed by hand, the play of the other file would count as its change.
    expect(await coach.commonBase(renamePlay(0, 'Assistant')(file))).toEqual(file);
    expect(await receive(coach, renamePlay(0, 'Assistant')(file))).toEqual([`play ${file.plays[0]!.id}`]);
    // And who goes on from it is merged by it.
    const goesOn = renamePlay(1, 'Goes on')(renamePlay(0, 'By hand')(file));
    expect(await coach.commonBase(goesOn)).toEqual(renamePlay(0, 'By hand')(file));
    expect(await receive(coach, goesOn)).toEqual([]);
  });

  test('has nothing in common with a file that does not come from mine', async () => {
    const [one, other] = [await tab(device()), await tab(device())];
    one.handOut();
    expect(await one.commonBase(read(other.handOut()))).toBeUndefined();
  });

  test('handing it out is no step of undo, and takes none away', async () => {
    const store = await tab(device());
    edit(store, renameTeam('A'));
    const before = store.playbook;
    store.undo();
    const file = read(store.handOut());
    expect(file.copies).toHaveLength(1);
    expect(store.steps).toEqual({ redo: 'Edit' });
    store.redo();
    expect(store.playbook).toEqual({ ...before, copies: file.copies });
  });

  test('without names it leads to the playbook that has them', async () => {
    const store = await tab(device());
    const file = read(store.handOut({ names: false }));
    edit(store, renameTeam('Later'));
    expect(await store.commonBase(file)).toEqual({ ...demoPlaybook, copies: file.copies });
  });
});
