import { type Diagnostic, diagnosticHead, limits, type Playbook, parsePlaybook } from '../playbook/index.ts';
import { exitCodes, Failure } from './failure.ts';
import type { Io } from './io.ts';
import { readText } from './read-file.ts';
import { tableWidth } from './table.ts';
import { wrapParagraph } from './wrap-paragraph.ts';

export interface OpenPlaybook {
  readonly playbook: Playbook;
  /** The file's text, which workers read again for themselves. */
  readonly document: string;
}

export interface ReadPlaybook {
  readonly document: string;
  readonly playbook: Playbook | undefined;
  readonly diagnostics: readonly Diagnostic[];
  readonly moreMayShow: boolean;
}

/** Reads a playbook file with everything that is wrong in it. Fails only when the file itself cannot be read. */
export async function readPlaybook(path: string): Promise<ReadPlaybook> {
  const document = await readText(path, limits.bytes);
  const { value, diagnostics, moreMayShow } = parsePlaybook(document);
  return { document, playbook: value, diagnostics, moreMayShow };
}

/** A playbook that can be played. Prints its problems on standard error; fails when one of them is an error. */
export async function openPlaybook(path: string, io: Io): Promise<OpenPlaybook> {
  const { document, playbook, diagnostics, moreMayShow } = await readPlaybook(path);
  if (playbook === undefined) {
    io.err(diagnosticLines(diagnostics));
    throw new Failure(
      `${path} cannot be played: ${problemCount(diagnostics)}. Mend the errors and try again.${moreWords(moreMayShow)}`,
      exitCodes.no,
    );
  }
  io.err(diagnosticLines(diagnostics.filter((one) => one.severity === 'warning')));
  return { document, playbook };
}

/** Each problem with its place and kind on one line and what to do below it, wrapped, with a line end after each. */
export function diagnosticLines(diagnostics: readonly Diagnostic[]): string {
  return diagnostics.map((one) => `${diagnosticHead(one)}\n${indented(bodyOf(one))}\n`).join('');
}

function bodyOf({ message, paste }: Diagnostic): string {
  const words = wrapParagraph(message, tableWidth - indent.length);
  return paste === undefined ? words : `${words}\n${paste}`;
}

const indent = '    ';

function indented(text: string): string {
  return text.replaceAll(/^/gm, indent);
}

/** Said after the problems when some of the file could not be looked at because of them. */
export function moreWords(moreMayShow: boolean): string {
  return moreMayShow ? ' Some of the file could not be looked at yet because of them: more may show then.' : '';
}

/** "2 errors, 1 warning". */
export function problemCount(diagnostics: readonly Diagnostic[]): string {
  const counts = (['error', 'warning', 'note'] as const).map((severity) => {
    const number = diagnostics.filter((one) => one.severity === severity).length;
    return number === 0 ? '' : `${number} ${severity}${number === 1 ? '' : 's'}`;
  });
  return counts.filter((part) => part !== '').join(', ') || 'no problems';
}
