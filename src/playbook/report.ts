import type { Diagnostic } from './diagnostic.ts';
import { type DiagnosticCode, diagnosticCodes } from './diagnostic-codes.ts';
import { type JsonNode, type JsonPath, nodeAt, pathText } from './json/json-node.ts';
import { createLineColumns } from './json/line-column.ts';
import { limits } from './limits.ts';

/** Collects what is wrong with one file and knows where in its text each value stands. */
export interface Report {
  /** Report about the value at a path. `offset` counts from 0 inside the value when it is a text. */
  add(code: DiagnosticCode, path: JsonPath, message: string, offset?: number): void;
  /** Report about a place in the text. */
  addAt(code: DiagnosticCode, offset: number, message: string): void;
  hasErrors(): boolean;
  /** Everything, in the order of the text, and a last line when there was more than is listed. */
  finish(): readonly Diagnostic[];
}

export function createReport(text: string, root: JsonNode | undefined): Report {
  const lines = createLineColumns(text);
  const found: { readonly offset: number; readonly diagnostic: Diagnostic }[] = [];
  let left = 0;

  function push(code: DiagnosticCode, path: string, message: string, offset: number | undefined): void {
    if (found.length >= limits.problems) {
      left++;
      return;
    }
    const { severity } = diagnosticCodes[code];
    const place = offset === undefined ? {} : lines.at(offset);
    found.push({ offset: offset ?? 0, diagnostic: { code, severity, path, ...place, message } });
  }

  return {
    add(code, path, message, offset) {
      push(code, pathText(path), message, root && placeInText(text, nodeAt(root, path), offset));
    },
    addAt(code, offset, message) {
      push(code, '(file)', message, offset);
    },
    hasErrors() {
      return left > 0 || found.some(({ diagnostic }) => diagnostic.severity === 'error');
    },
    finish() {
      const listed = [...found].sort((one, other) => one.offset - other.offset).map(({ diagnostic }) => diagnostic);
      if (left === 0) return listed;
      const message = `At least ${left} more ${left === 1 ? 'problem is' : 'problems are'} not listed. Mend these first and check again.`;
      return [...listed, { code: 'too-many-problems', severity: 'error', path: '(file)', message }];
    },
  };
}

/** The offset in the file of an offset inside a text value, or of the value's start when escapes blur it. */
function placeInText(text: string, node: JsonNode, offset: number | undefined): number {
  if (offset === undefined) return node.start;
  const raw = text.slice(node.start, node.end);
  return raw.startsWith('"') && !raw.includes('\\') ? node.start + 1 + offset : node.start;
}
