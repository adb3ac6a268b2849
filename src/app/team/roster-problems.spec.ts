import { describe, expect, it } from 'vitest';
import { demoPlaybook, type Playbook, type Player } from '../../playbook/index.ts';
import { rosterColumns } from './roster-columns.ts';
import { rosterProblems } from './roster-problems.ts';

const units = { speed: 'mph', height: 'cm' } as const;
const columns = [...rosterColumns('grades', units), ...rosterColumns('measured', units)];
const man = (number: number, rest: Partial<Player> = {}): Player => ({
  number,
  name: `Man ${number}`,
  hand: 'right',
  ...rest,
});
const withMen = (...roster: Player[]): Playbook => ({ ...demoPlaybook, team: { ...demoPlaybook.team, roster } });
const problemsOf = (...roster: Player[]) =>
  rosterProblems(withMen(...roster), columns).map((row) => Object.fromEntries(row));

describe('what is wrong in a roster', () => {
  it('is nothing in the demo', () => {
    expect(rosterProblems(demoPlaybook, columns).flatMap((row) => [...row])).toEqual([]);
  });

  it('is told of both men who wear the same number, each by the other', () => {
    const [one, two] = problemsOf(man(11, { name: 'Teo' }), man(11, { name: 'Odell' }));
    expect(one?.number).toContain('Odell wears 11 too');
    expect(two?.number).toContain('Teo wears 11 too');
  });

  it.each([
    ['number', man(1.5)],
    ['name', man(7, { name: ' ' })],
    ['grade catch', man(7, { grades: { catch: 9 } })],
    ['notes', man(7, { notes: 'x'.repeat(3000) })],
    ['measured shotSpeedMph', man(7, { measured: { shotSpeedMph: [300] } })],
    ['measured heightCm', man(7, { measured: { heightCm: 20 } })],
    ['measured onGoal', man(7, { measured: { onGoal: { hits: 9, shots: 3 } } })],
  ])('stands in the cell: %s', (cell, player) => {
    expect(Object.keys(problemsOf(player)[0] ?? {})).toEqual([cell]);
  });

  it('goes by the level: a reading that is usual at college is a slip at 8U', () => {
    const fast = man(7, { measured: { shotSpeedMph: [88] } });
    expect(problemsOf({ ...fast, level: 'college' })[0]).toEqual({});
    expect(problemsOf({ ...fast, level: '8U' })[0]).toHaveProperty(['measured shotSpeedMph']);
  });
});

describe('the cells of a roster', () => {
  it('read back what they print, for every man of the demo', () => {
    for (const player of demoPlaybook.team.roster) {
      for (const column of columns) {
        if (column.kind !== 'text') continue;
        const read = column.read(column.print(player));
        expect(read.kind === 'read' && read.value(player), `${column.id} of ${player.name}`).toEqual(player);
      }
    }
  });

  it('put back what they show, for every choice', () => {
    for (const column of columns) {
      if (column.kind === 'text') continue;
      const player = man(7, { role: 'attack', level: '12U', crosse: 'pole', absent: true });
      if (column.kind === 'check') {
        expect(column.put(player, column.isOn(player))).toEqual(player);
        expect(column.isOn(column.put(player, false))).toBe(false);
      } else {
        expect(column.put(player, column.valueOf(player))).toEqual(player);
        for (const { value } of column.options) expect(column.valueOf(column.put(player, value))).toBe(value);
      }
    }
  });

  it('leave no empty grades or measurements behind', () => {
    const [grade, reading] = ['grade catch', 'measured shotSpeedMph'].map((id) =>
      columns.find((column) => column.id === id),
    );
    const player = man(7, { grades: { catch: 4 }, measured: { shotSpeedMph: [60] } });
    for (const column of [grade, reading]) {
      const read = column?.kind === 'text' ? column.read('') : undefined;
      const after = read?.kind === 'read' ? read.value(player) : undefined;
      expect(Object.keys(after ?? {})).toHaveLength(Object.keys(player).length - 1);
    }
  });
});
