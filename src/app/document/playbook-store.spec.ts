import { describe, expect, test } from 'vitest';
import { demoPlaybook, type Playbook, parsePlaybook } from '../../playbook/index.ts';
import { device, openingTab, removePlay, renamePlay, renameTeam, tab } from './tabs.fixture.ts';

describe('a store', () => {
  test('begins with the initial playbook, exactly', async () => {
    const store = await tab(device());
    expect(store.playbook).toEqual(demoPlaybook);
    expect(store.isFirstVisit).toBe(true);
    expect(parsePlaybook(store.exportText()).value).toEqual(demoPlaybook);
  });

  test('refuses edits while it is being opened, and shows the initial playbook', async () => {
    const store = openingTab(device());
    expect(store.status.kind).toBe('loading');
    expect(store.edit('Rename', renameTeam('Early'))).toBe(false);
    expect(store.playbook).toBe(demoPlaybook);
    await store.whenReady;
    expect(store.playbook.team.name).toBe(demoPlaybook.team.name);
  });

  test('keeps the identity of what an edit does not touch', async () => {
    const store = await tab(device());
    const before = store.playbook;
    store.edit('Rename a play', renamePlay(1, 'Other'));
    expect(store.playbook).not.toBe(before);
    expect(store.playbook.team).toBe(before.team);
    expect(store.playbook.opponents).toBe(before.opponents);
    expect(store.playbook.plays[0]).toBe(before.plays[0]);
    expect(store.playbook.plays[1]!.name).toBe('Other');
    expect(store.playbook.plays[2]).toBe(before.plays[2]);
  });

  test('is the same object until something changes', async () => {
    const store = await tab(device());
    const { playbook, steps } = store;
    let told = 0;
    store.subscribe(() => told++);
    expect(store.edit('Nothing', (same) => same)).toBe(false);
    expect(store.edit('The same anew', (same) => structuredClone(same))).toBe(false);
    expect(store.playbook).toBe(playbook);
    expect(store.steps).toBe(steps);
    expect(told).toBe(0);
  });

  test('tells who listens, until he stops', async () => {
    const store = await tab(device());
    const heard: string[] = [];
    const stop = store.subscribe(() => heard.push(store.playbook.team.name));
    store.edit('Rename', renameTeam('A'));
    stop();
    store.edit('Rename', renameTeam('B'));
    expect(heard).toContain('A');
    expect(heard).not.toContain('B');
  });

  test('holds what is half typed', async () => {
    const { name, alone } = device();
    const store = await tab({ name, persistence: alone });
    const half = (playbook: Playbook): Playbook => ({
      ...playbook,
      team: { ...playbook.team, name: '' },
      plays: playbook.plays.map((play) => ({ ...play, beats: [{ id: 'b', on: 'catch', do: ['TR pass'] }] })),
    });
    store.edit('Half', half);
    await store.settled();
    const again = await tab({ name, persistence: alone });
    expect(again.status.kind).toBe('saved');
    expect(again.playbook).toEqual(half(demoPlaybook));
  });
});

describe('undo', () => {
  test('takes back and does again, with the names of the steps', async () => {
    const store = await tab(device());
    store.edit('Rename the team', renameTeam('A'));
    store.edit('Remove a play', removePlay(0));
    expect(store.steps).toEqual({ undo: 'Remove a play' });
    expect(store.undo()).toBe('Remove a play');
    expect(store.steps).toEqual({ undo: 'Rename the team', redo: 'Remove a play' });
    expect(store.undo()).toBe('Rename the team');
    expect(store.playbook).toEqual(demoPlaybook);
    expect(store.undo()).toBeUndefined();
    expect(store.redo()).toBe('Rename the team');
    expect(store.redo()).toBe('Remove a play');
    expect(store.redo()).toBeUndefined();
    expect(store.playbook).toEqual(removePlay(0)(renameTeam('A')(demoPlaybook)));
    expect(store.steps).toEqual({ undo: 'Remove a play' });
  });

  test('forgets what was taken back when something new is done', async () => {
    const store = await tab(device());
    store.edit('One', renameTeam('A'));
    store.undo();
    store.edit('Two', renameTeam('B'));
    expect(store.steps).toEqual({ undo: 'Two' });
  });

  test('keys of one field are one step until the field is left', async () => {
    const store = await tab(device());
    const type = (name: string) => store.edit('Rename the team', renameTeam(name), { joins: 'typing:team/name' });
    for (const name of ['L', 'La', 'Lar', 'Lark']) type(name);
    store.settle();
    for (const name of ['Larks', 'Larks!']) type(name);
    expect(store.undo()).toBe('Rename the team');
    expect(store.playbook.team.name).toBe('Lark');
    store.undo();
    expect(store.playbook).toEqual(demoPlaybook);
  });

  test('another field, another edit or an undo ends a joined step', async () => {
    const store = await tab(device());
    store.edit('Team', renameTeam('A'), { joins: 'team' });
    store.edit('Play', renamePlay(0, 'P'), { joins: 'play' });
    store.edit('Team', renameTeam('AB'), { joins: 'team' });
    store.edit('Loose', renameTeam('ABC'));
    store.edit('Loose', renameTeam('ABCD'));
    const seen = [];
    while (store.undo() !== undefined) seen.push(`${store.playbook.team.name} ${store.playbook.plays[0]!.name}`);
    const [team, play] = [demoPlaybook.team.name, demoPlaybook.plays[0]!.name];
    expect(seen).toEqual(['ABC P', 'AB P', 'A P', `A ${play}`, `${team} ${play}`]);
  });

  test('a joined step can be given up, and then is not done again', async () => {
    const store = await tab(device());
    store.edit('Rename', renameTeam('A'));
    for (const name of ['x', 'y', 'z']) store.edit('Drag', renamePlay(0, name), { joins: 'drag' });
    expect(store.abandon('other')).toBe(false);
    expect(store.abandon('drag')).toBe(true);
    expect(store.abandon('drag')).toBe(false);
    expect(store.playbook).toEqual(renameTeam('A')(demoPlaybook));
    expect(store.steps).toEqual({ undo: 'Rename' });
  });

  test('giving up a step that changed nothing leaves the one before', async () => {
    const store = await tab(device());
    store.edit('Rename', renameTeam('A'));
    store.edit('Drag', renameTeam('A'), { joins: 'drag' });
    expect(store.abandon('drag')).toBe(false);
    expect(store.playbook.team.name).toBe('A');
  });

  test('takes back a whole replacement at once', async () => {
    const store = await tab(device());
    await store.replace('Import a file', { ...demoPlaybook, team: { ...demoPlaybook.team, name: 'New' }, plays: [] });
    expect(store.playbook.plays).toEqual([]);
    expect(store.undo()).toBe('Import a file');
    expect(store.playbook).toEqual(demoPlaybook);
  });
});
