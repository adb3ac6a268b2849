import { describe, expect, it } from 'vitest';
import { demoPlaybook, parsePlaybook, type SchemeEntry, serializePlaybook } from '../../playbook/index.ts';
import { schemeProblems } from './scheme-problems.ts';

const net = demoPlaybook.schemes![0]!;

function problemsOf(scheme: SchemeEntry) {
  const { opponents: _, ...rest } = demoPlaybook;
  return schemeProblems(scheme, parsePlaybook(serializePlaybook({ ...rest, schemes: [scheme] })).diagnostics);
}

function withRow(at: number, duties: string[]): SchemeEntry {
  return { ...net, rows: net.rows.map((row, i) => (i === at ? { ...row, do: duties } : row)) };
}

describe('what is wrong with a grid', () => {
  it('is nothing in a sound one', () => {
    expect(problemsOf(net)).toEqual({ whole: [], byRow: new Map() });
  });

  it('stands at the cell', () => {
    const { byRow } = problemsOf(withRow(1, ['tr ball', 'tl man Q9', 'lr man WR', 'll pipe WL', 'c front crease']));
    expect([...byRow.keys()]).toEqual(['TR']);
    expect(byRow.get('TR')).toEqual([{ man: 'tl', text: expect.stringContaining('Q9') }]);
  });

  it('stands at the row when it is about the row', () => {
    const { byRow } = problemsOf(withRow(0, ['tr man TR', 'tl man TL', 'lr man WR', 'll man WL']));
    expect(byRow.get('P')).toEqual([{ man: undefined, text: expect.stringContaining('nothing about c') }]);
    const unguarded = problemsOf(withRow(0, ['tr man TR', 'tl man TL', 'lr man WR', 'll man WL', 'c front crease']));
    expect(unguarded.byRow.get('P')).toEqual([{ man: undefined, text: expect.stringContaining('nobody') }]);
  });

  it('stands at the whole when it is about the men', () => {
    const { whole } = problemsOf({ ...net, men: { ...net.men, c: [5, 10] } });
    expect(whole).toEqual([expect.stringContaining('same place')]);
  });
});
