import { describe, expect, test } from 'vitest';
import { demoPlaybook } from '../../playbook/index.ts';
import { device, renameTeam, tab } from './tabs.fixture.ts';

describe('broken storage', () => {
  const damages: readonly [string, (updates: readonly Uint8Array[]) => readonly unknown[]][] = [
    ['cut in half', ([first]) => [first!.slice(0, first!.length / 2)]],
    ['zeros', () => [new Uint8Array(100)]],
    ['noise', () => [Uint8Array.from({ length: 300 }, (_, i) => (i * 197 + 31) % 256)]],
    ['no bytes at all', () => ['text', null, 7]],
    ['an empty document', () => [new Uint8Array([0, 0])]],
    ['the first lost', (updates) => updates.slice(1)],
  ];

  test.each(damages)('%s: nothing is lost, and work goes on beside it', async (_, damage) => {
    const { name, alone } = device();
    const first = await tab({ name, persistence: alone });
    first.edit('Rename', renameTeam('Before'));
    await first.settled();
    await first.close();
    const storage = await alone.open(name);
    const damaged = damage((await storage.read()).map(({ update }) => update as Uint8Array));
    await storage.startBeside();
    await storage.append(damaged as Uint8Array[]);
    storage.close();

    const store = await tab({ name, persistence: alone });
    expect(store.status.kind).toBe('broken');
    expect(store.isFirstVisit).toBe(false);
    // The version that was kept when the file was first opened is the best that is left.
    expect(store.playbook).toEqual(demoPlaybook);
    store.edit('Rename', renameTeam('After'));
    await store.settled();
    expect(store.status.kind).toBe('broken');
    store.acknowledgeBroken();
    expect(store.status.kind).toBe('saved');
    const aside = await store.setAside();
    const raw = JSON.parse(aside.at(-1)!.text);
    expect(raw.updates.length).toBe(damaged.length);
    const [expected] = damaged;
    expect(raw.updates[0]).toEqual(
      expected instanceof Uint8Array ? Buffer.from(expected).toString('base64') : expected,
    );
    await store.close();

    const again = await tab({ name, persistence: alone });
    expect(again.status.kind).toBe('saved');
    expect(again.playbook.team.name).toBe('After');
    expect((await again.setAside()).length).toBe(aside.length);
    for (const { id } of aside) await again.dropSetAside(id);
    expect(await again.setAside()).toEqual([]);
    expect(again.playbook.team.name).toBe('After');
  });

  test('one damaged update among sound ones: all that can be read is there', async () => {
    const { name, alone } = device();
    const first = await tab({ name, persistence: alone });
    first.edit('Rename', renameTeam('Before'));
    await first.settled();
    const storage = await alone.open(name);
    await storage.append([new Uint8Array([1, 2, 3])]);
    storage.close();
    const store = await tab({ name, persistence: alone });
    expect(store.status.kind).toBe('broken');
    expect(store.playbook.team.name).toBe('Before');
    await store.settled();
    const again = await tab({ name, persistence: alone });
    expect(again.playbook.team.name).toBe('Before');
    expect(again.status.kind).toBe('saved');
  });
});
