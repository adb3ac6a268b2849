import type { DiagnosticCode } from './diagnostic-codes.ts';
import type { Severity } from './severity.ts';

export type { Severity } from './severity.ts';

/** One thing that is wrong, doubtful or worth knowing in a playbook file. */
export interface Diagnostic {
  /** Stable: never renamed, never reused. What it means stands in `diagnosticCodes`. */
  readonly code: DiagnosticCode;
  readonly severity: Severity;
  /** Where in the document: 'plays[0].beats[2].do[1]', or '(file)'. */
  readonly path: string;
  /** Counted from 1; absent when the place in the text is not known. */
  readonly line?: number;
  readonly column?: number;
  /** What is wrong, where, and what to do: plain sentences. */
  readonly message: string;
}

export function hasErrors(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some((diagnostic) => diagnostic.severity === 'error');
}

/** `3:14 error pass-to-self: ... (plays[0].beats[0].do[1])`, one line a diagnostic. */
export function diagnosticText(diagnostic: Diagnostic): string {
  const place = diagnostic.line === undefined ? '' : `${diagnostic.line}:${diagnostic.column} `;
  return `${place}${diagnostic.severity} ${diagnostic.code}: ${diagnostic.message} (${diagnostic.path})`;
}
