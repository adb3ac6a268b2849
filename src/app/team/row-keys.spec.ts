import { describe, expect, it } from 'vitest';
import type { Player } from '../../playbook/index.ts';
import { createRowKeys } from './row-keys.ts';

const man = (number: number, name = `Man ${number}`): Player => ({ number, name, hand: 'right' });

describe('the names of rows', () => {
  it('are the same for the same roster', () => {
    const keys = createRowKeys();
    const roster = [man(1), man(2)];
    expect(keys.keysOf(roster)).toBe(keys.keysOf(roster));
    expect(new Set(keys.keysOf(roster)).size).toBe(2);
  });

  it('stay when a number is typed that another man wears', () => {
    const keys = createRowKeys();
    const [one, two] = [man(1), man(2)];
    const before = keys.keysOf([one, two]);
    expect(keys.keysOf([one, { ...two, number: 1 }])).toEqual(before);
    expect(keys.keysOf([one, { ...two, number: 12 }])).toEqual(before);
  });

  it('go with a man who is moved', () => {
    const keys = createRowKeys();
    const [one, two, three] = [man(1), man(2), man(3)];
    const [first, second, third] = keys.keysOf([one, two, three]);
    expect(keys.keysOf([three, one, two])).toEqual([third, first, second]);
  });

  it('end with a man who is taken out, and no other takes his', () => {
    const keys = createRowKeys();
    const [one, two, three] = [man(1), man(2), man(3)];
    const [first, second, third] = keys.keysOf([one, two, three]);
    expect(keys.keysOf([one, three])).toEqual([first, third]);
    expect([first, second, third]).not.toContain(keys.keysOf([one, three, man(4)])[2]);
  });

  it('give the empty row its name before somebody stands in it', () => {
    const keys = createRowKeys();
    const one = man(1);
    keys.keysOf([one]);
    const next = keys.next();
    expect(keys.keysOf([one, man(2)])[1]).toBe(next);
    expect(keys.next()).not.toBe(next);
  });
});
