import type { DiagnosticCode } from './diagnostic-codes.ts';
import type { Severity } from './severity.ts';

export type { Severity } from './severity.ts';

/** One thing that is wrong, doubtful or worth knowing in a playbook file. */
export interface Diagnostic {
  /** Stable: never renamed, never reused. What it means stands in `diagnosticCodes`. */
  readonly code: DiagnosticCode;
  readonly severity: Severity;
  /** Where in the document, for programs: 'plays[0].beats[2].do[1]', or '(file)'. */
  readonly path: string;
  /** The same for people, by the file's own names: 'Gull, step "freeze"'; empty when the whole file is meant. */
  readonly where: string;
  /** Counted from 1; absent when the place in the text is not known. */
  readonly line?: number;
  readonly column?: number;
  /** What is wrong, where, and what to do: plain sentences. */
  readonly message: string;
  /** Lines that can be pasted into the file as they are; absent for most. */
  readonly paste?: string;
}

export function hasErrors(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some((diagnostic) => diagnostic.severity === 'error');
}

/** `3:14 error self-target (Gull, step "freeze"): ...`, one line a diagnostic. */
export function diagnosticText(diagnostic: Diagnostic): string {
  return `${diagnosticHead(diagnostic)}: ${diagnostic.message}`;
}

/** The same without the message: where it is and what kind of thing it is. */
export function diagnosticHead({ line, column, severity, code, where }: Diagnostic): string {
  const place = line === undefined ? '' : `${line}:${column} `;
  return `${place}${severity} ${code}${where === '' ? '' : ` (${where})`}`;
}
