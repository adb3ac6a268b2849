import { describe, expect, test } from 'vitest';
import { demoPlaybook, parsePlaybook, serializePlaybook } from '../../playbook/index.ts';
import { device, removePlay, renameTeam, tab } from './tabs.fixture.ts';

describe('versions', () => {
  const minute = 60_000;

  test('are kept when the file is opened, every ten minutes of edits, and round a replacement; ten at most', async () => {
    let time = 1_000_000;
    const store = await tab({ ...device(), now: () => time });
    const reasons = async () => (await store.versions()).map((version) => version.reason);
    expect(await reasons()).toEqual(['opened']);
    store.edit('Rename', renameTeam('A'));
    time += 11 * minute;
    store.edit('Rename', renameTeam('B'));
    store.edit('Rename', renameTeam('C'));
    expect(await reasons()).toEqual(['interval', 'opened']);
    await store.replace('Import a file', { ...store.playbook, plays: [] });
    expect(await reasons()).toEqual(['imported', 'beforeReplace', 'interval', 'opened']);
    for (let i = 0; i < 20; i++) {
      time += 11 * minute;
      store.edit('Rename', renameTeam(`T${i}`));
      await store.settled();
    }
    expect((await reasons()).length).toBe(10);
    expect((await store.versions())[0]!.team).toBe('T18');
  });

  test('come back as one step that can be undone', async () => {
    const store = await tab(device());
    store.edit('Remove', removePlay(0));
    store.edit('Rename', renameTeam('A'));
    const before = store.playbook;
    const [version] = await store.versions();
    expect(await store.restore(version!.id)).toBe(true);
    expect(store.playbook).toEqual(demoPlaybook);
    store.undo();
    expect(store.playbook).toEqual(before);
    expect(await store.restore(99_999)).toBe(false);
  });

  test('the last that was handed out as a file stays, however many follow', async () => {
    let time = 1_000_000;
    const store = await tab({ ...device(), now: () => time });
    store.edit('Rename', renameTeam('Handed out'));
    await store.keepVersion('exported');
    const edited = store.playbook;
    for (let i = 0; i < 20; i++) {
      time += 11 * minute;
      store.edit('Rename', renameTeam(`T${i}`));
      await store.settled();
    }
    const versions = await store.versions();
    expect(versions.map(({ reason }) => reason)).toEqual([...Array(9).fill('interval'), 'exported']);
    expect(await store.version(versions.at(-1)!.id)).toEqual(edited);
    expect(await store.version(99_999)).toBeUndefined();
  });

  test('what is handed out unchanged is kept once, and said to be handed out', async () => {
    const store = await tab(device());
    await store.keepVersion('exported');
    await store.keepVersion('interval');
    expect((await store.versions()).map(({ reason }) => reason)).toEqual(['exported']);
  });

  test('opening again without a change keeps no second one', async () => {
    const { name, alone } = device();
    for (let i = 0; i < 3; i++) await (await tab({ name, persistence: alone })).close();
    const store = await tab({ name, persistence: alone });
    expect((await store.versions()).length).toBe(1);
  });
});

test('what is exported without names holds none', async () => {
  const store = await tab(device());
  const text = store.exportText({ names: false });
  for (const { name } of demoPlaybook.team.roster) {
    for (const part of name.split(' ')) expect(text).not.toMatch(new RegExp(`\\b${part}\\b`));
  }
  expect(parsePlaybook(text).value?.team.roster.map((player) => player.number)).toEqual(
    demoPlaybook.team.roster.map((player) => player.number),
  );
  expect(text).not.toBe(serializePlaybook(demoPlaybook));
});
