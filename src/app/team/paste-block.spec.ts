import { describe, expect, it } from 'vitest';
import { demoPlaybook } from '../../playbook/index.ts';
import { areMen, pasteBlock } from './paste-block.ts';
import { rosterColumns } from './roster-columns.ts';

const units = { speed: 'mph', height: 'cm' } as const;
const measured = rosterColumns('measured', units);
const grades = rosterColumns('grades', units);
const shots = measured.findIndex(({ id }) => id === 'measured shotSpeedMph');
const column = (id: string) => grades.findIndex((each) => each.id === id);

describe('cells that are pasted over the roster', () => {
  it('go to the men from that row on, and leave the others as they are', () => {
    const { playbook, count } = pasteBlock(demoPlaybook, { row: 3, column: shots }, [['58 61'], ['60']], measured);
    expect(count).toBe(2);
    expect(playbook.team.roster[3]?.measured).toEqual({ shotSpeedMph: [58, 61] });
    expect(playbook.team.roster[4]?.measured).toEqual({ shotSpeedMph: [60] });
    expect(playbook.team.roster[5]).toBe(demoPlaybook.team.roster[5]);
  });

  it('are told where they say nothing, and the rest is taken', () => {
    const block = pasteBlock(demoPlaybook, { row: 0, column: shots }, [['fast'], ['60']], measured);
    expect(block.cells[0]?.[0]?.problem).toContain('“fast”');
    expect(block.playbook.team.roster[0]).toBe(demoPlaybook.team.roster[0]);
    expect(block.playbook.team.roster[1]?.measured?.shotSpeedMph).toEqual([60]);
  });

  it('clear a cell where they are empty', () => {
    const { playbook } = pasteBlock(demoPlaybook, { row: 1, column: column('grade catch') }, [['']], grades);
    expect(playbook.team.roster[1]?.grades).not.toHaveProperty('catch');
  });

  it('choose by word or by letter, and tell what is no choice', () => {
    const texts = [['L'], ['both'], ['Right'], ['none']];
    const block = pasteBlock(demoPlaybook, { row: 0, column: column('hand') }, texts, grades);
    expect(block.playbook.team.roster.slice(0, 3).map(({ hand }) => hand)).toEqual(['left', 'both', 'right']);
    expect(block.cells[3]?.[0]?.problem).toContain('Right, Left, Both');
  });

  it('end at the last man and the last column, and say how much is beyond', () => {
    const last = demoPlaybook.team.roster.length - 1;
    const block = pasteBlock(
      demoPlaybook,
      { row: last, column: measured.length - 1 },
      [
        ['x', 'y'],
        ['no', ''],
      ],
      measured,
    );
    expect(block).toMatchObject({ rowsBeyond: 1, columnsBeyond: 1, count: 1 });
    expect(block.playbook.team.roster[last]?.absent).toBe(true);
    expect(block.playbook.team.roster).toHaveLength(last + 1);
  });
});

describe('pasted cells are men', () => {
  it.each([
    ['with a header', { row: 2, column: 5 }, true, 3, true],
    ['in the empty row', { row: 10, column: 4 }, false, 1, true],
    ['from the number on', { row: 2, column: 0 }, false, 3, true],
    ['not a column of numbers', { row: 2, column: 0 }, false, 1, false],
    ['not in the middle of a row', { row: 2, column: 6 }, false, 3, false],
  ])('%s', (_, at, hasHeader, width, expected) => expect(areMen(at, 10, hasHeader, width)).toBe(expected));
});
