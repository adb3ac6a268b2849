import { type Diagnostic, diagnosticText, limits, type Playbook, parsePlaybook } from '../playbook/index.ts';
import { exitCodes, Failure } from './failure.ts';
import type { Io } from './io.ts';
import { readText } from './read-file.ts';

export interface OpenPlaybook {
  readonly playbook: Playbook;
  /** The file's text, which workers read again for themselves. */
  readonly document: string;
}

export interface ReadPlaybook {
  readonly document: string;
  readonly playbook: Playbook | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads a playbook file with everything that is wrong in it. Fails only when the file itself cannot be read. */
export async function readPlaybook(path: string): Promise<ReadPlaybook> {
  const document = await readText(path, limits.bytes);
  const { value, diagnostics } = parsePlaybook(document);
  return { document, playbook: value, diagnostics };
}

/** A playbook that can be played. Prints its problems on standard error; fails when one of them is an error. */
export async function openPlaybook(path: string, io: Io): Promise<OpenPlaybook> {
  const { document, playbook, diagnostics } = await readPlaybook(path);
  if (playbook === undefined) {
    io.err(diagnosticLines(diagnostics));
    throw new Failure(
      `${path} cannot be played: ${problemCount(diagnostics)}. Mend the errors and try again.`,
      exitCodes.no,
    );
  }
  io.err(diagnosticLines(diagnostics.filter((one) => one.severity === 'warning')));
  return { document, playbook };
}

/** One line for each problem, with a line end after each. */
export function diagnosticLines(diagnostics: readonly Diagnostic[]): string {
  return diagnostics.map((one) => `${diagnosticText(one)}\n`).join('');
}

/** "2 errors, 1 warning". */
export function problemCount(diagnostics: readonly Diagnostic[]): string {
  const counts = (['error', 'warning', 'note'] as const).map((severity) => {
    const number = diagnostics.filter((one) => one.severity === severity).length;
    return number === 0 ? '' : `${number} ${severity}${number === 1 ? '' : 's'}`;
  });
  return counts.filter((part) => part !== '').join(', ') || 'no problems';
}
