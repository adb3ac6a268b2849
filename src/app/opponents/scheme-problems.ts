import type { Diagnostic, SchemeEntry } from '../../playbook/index.ts';

/** What is wrong with a grid, where a coach sees it: at a cell, at a row, or at the whole. */
export interface SchemeProblems {
  readonly whole: readonly string[];
  /** By the ball's place. */
  readonly byRow: ReadonlyMap<string, readonly RowProblem[]>;
}

export interface RowProblem {
  /** The defender whose duty it is about; undefined for the whole row. */
  readonly man: string | undefined;
  readonly text: string;
}

/** The diagnostics of a playbook in which the scheme is the only one, sorted to where they belong. Notes are left out, and so is what others have. */
export function schemeProblems(scheme: SchemeEntry, diagnostics: readonly Diagnostic[]): SchemeProblems {
  const whole: string[] = [];
  const byRow = new Map<string, RowProblem[]>();
  for (const { severity, path, message } of diagnostics) {
    if (severity === 'note' || !path.startsWith('schemes[0]')) continue;
    const found = /^schemes\[0\]\.rows\[(\d+)\](?:\.do\[(\d+)\])?/.exec(path);
    const row = found === null ? undefined : scheme.rows[Number(found[1])];
    if (row === undefined) {
      whole.push(message);
      continue;
    }
    const phrase = found?.[2] === undefined ? undefined : row.do[Number(found[2])];
    const man = phrase?.trim().split(/\s+/)[0];
    const problems = byRow.get(row.ball) ?? [];
    problems.push({ man: man !== undefined && Object.hasOwn(scheme.men, man) ? man : undefined, text: message });
    byRow.set(row.ball, problems);
  }
  return { whole, byRow };
}
