import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../../playbook/index.ts';
import { indexedDbPersistence } from './indexed-db-persistence.ts';
import { device, newName, playNames, removePlay, renamePlay, renameTeam, tab, until } from './tabs.fixture.ts';

describe('two tabs', () => {
  test('that both come for the first time hold the playbook once', async () => {
    const home = device();
    const [one, two] = await Promise.all([tab(home), tab(home)]);
    one!.edit('Rename', renameTeam('A'));
    await until(() => two!.playbook.team.name === 'A');
    expect(two!.playbook).toEqual(renameTeam('A')(demoPlaybook));
    expect(one!.playbook).toEqual(two!.playbook);
  });

  test('agree live, and undo of one leaves what the other did', async () => {
    const home = device();
    const one = await tab(home);
    const two = await tab(home);
    one.edit('Rename', renamePlay(0, 'One'));
    await until(() => playNames(two)[0] === 'One');
    two.edit('Rename', renamePlay(1, 'Two'));
    await until(() => playNames(one)[1] === 'Two');
    expect(two.steps).toEqual({ undo: 'Rename' });
    one.undo();
    await until(() => playNames(two)[0] === demoPlaybook.plays[0]!.name);
    expect(playNames(two)[1]).toBe('Two');
    expect(two.playbook).toEqual(one.playbook);
  });

  test('undo does not write over what the other tab wrote later in the same place', async () => {
    const home = device();
    const one = await tab(home);
    const two = await tab(home);
    one.edit('Rename', renamePlay(0, 'One'));
    await until(() => playNames(two)[0] === 'One');
    two.edit('Rename', renamePlay(0, 'Two'));
    await until(() => playNames(one)[0] === 'Two');
    one.undo();
    expect(playNames(one)[0]).toBe('Two');
  });

  test('undo of what another tab has changed since says so, and takes back no earlier step in its place', async () => {
    const home = device();
    const one = await tab(home);
    const two = await tab(home);
    one.edit('Rename the team', renameTeam('A'));
    one.edit('Rename the play', renamePlay(0, 'One'));
    await until(() => playNames(two)[0] === 'One');
    two.edit('Rename', renamePlay(0, 'Two'));
    await until(() => playNames(one)[0] === 'Two');
    let told = 0;
    one.subscribe(() => told++);
    expect(one.undo()).toBeUndefined();
    expect(told).toBeGreaterThan(0);
    expect(one.overwritten).toMatchObject({ move: 'undo', label: 'Rename the play' });
    expect(one.playbook.team.name).toBe('A');
    expect(one.steps).toEqual({ undo: 'Rename the team' });
    expect(one.undo()).toBe('Rename the team');
    expect(one.overwritten).toBeUndefined();
    expect(one.playbook).toEqual(renamePlay(0, 'Two')(demoPlaybook));
  });

  test('redo of what another tab has changed since says so', async () => {
    const home = device();
    const one = await tab(home);
    const two = await tab(home);
    one.edit('Rename the play', renamePlay(0, 'One'));
    await until(() => playNames(two)[0] === 'One');
    one.undo();
    await until(() => playNames(two)[0] === demoPlaybook.plays[0]!.name);
    two.edit('Rename', renamePlay(0, 'Two'));
    await until(() => playNames(one)[0] === 'Two');
    expect(one.redo()).toBeUndefined();
    expect(one.overwritten).toMatchObject({ move: 'redo', label: 'Rename the play' });
    one.edit('Rename the team', renameTeam('A'));
    expect(one.overwritten).toBeUndefined();
  });

  test('undo takes back the own last change also after another tab changed the same play before it', async () => {
    const home = device();
    const one = await tab(home);
    const two = await tab(home);
    one.edit('First', renamePlay(0, 'One'));
    await until(() => playNames(two)[0] === 'One');
    two.edit('Rename', renamePlay(0, 'Two'));
    await until(() => playNames(one)[0] === 'Two');
    one.edit('Second', renamePlay(0, 'Three'));
    expect(one.undo()).toBe('Second');
    expect(playNames(one)[0]).toBe('Two');
    expect(one.overwritten).toBeUndefined();
  });

  test('a move in one and an edit of the same play in the other both stay', async () => {
    const home = device();
    const one = await tab(home);
    const two = await tab(home);
    const last = demoPlaybook.plays.length - 1;
    one.edit('Move up', (p) => ({ ...p, plays: [p.plays[last]!, ...p.plays.slice(0, last)] }));
    two.edit('Rename', renamePlay(last, 'Moved'));
    await until(() => playNames(one)[0] === 'Moved' && playNames(two)[0] === 'Moved');
    expect(one.playbook).toEqual(two.playbook);
    expect(one.playbook.plays.length).toBe(last + 1);
  });

  test('an edit beats a removal at the same time', async () => {
    const home = device();
    const one = await tab(home);
    const two = await tab(home);
    one.edit('Remove', removePlay(1));
    two.edit('Rename', renamePlay(1, 'Wanted'));
    await until(() => playNames(one)[1] === 'Wanted' && playNames(two)[1] === 'Wanted');
    expect(one.playbook).toEqual(two.playbook);
  });

  test('a damaged message is passed over', async () => {
    const home = device();
    const one = await tab(home);
    const bad = home.persistence.connect(home.name)!;
    const loud = [null, 7, 'x', {}, { kind: 'update' }, { kind: 'update', update: new Uint8Array([9, 9, 9, 255]) }];
    for (const message of [...loud, { kind: 'hello', vector: new Uint8Array([255]) }]) bad.post(message);
    const two = await tab(home);
    one.edit('Rename', renameTeam('A'));
    await until(() => two.playbook.team.name === 'A');
    bad.close();
  });

  test('without storage still agree', async () => {
    const name = newName();
    const persistence = indexedDbPersistence({ BroadcastChannel });
    const one = await tab({ name, persistence });
    one.edit('Rename', renameTeam('A'));
    const two = await tab({ name, persistence });
    await until(() => two.playbook.team.name === 'A');
  });
});
