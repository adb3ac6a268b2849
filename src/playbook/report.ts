import type { Diagnostic } from './diagnostic.ts';
import { type DiagnosticCode, diagnosticCodes } from './diagnostic-codes.ts';
import { type JsonNode, type JsonPath, nodeAt, pathText } from './json/json-node.ts';
import { createLineColumns } from './json/line-column.ts';
import { limits } from './limits.ts';
import { placeWords } from './place-words.ts';

/** Collects what is wrong with one file and knows where in its text each value stands. */
export interface Report {
  /** Report about the value at a path. `offset` counts from 0 inside the value when it is a text. */
  add(code: DiagnosticCode, path: JsonPath, message: string, offset?: number, paste?: string): void;
  /** Report about a place in the text. */
  addAt(code: DiagnosticCode, offset: number, message: string): void;
  /** Something could not be checked, because what it hangs on is broken. */
  leaveOut(): void;
  hasErrors(): boolean;
  hasLeftOut(): boolean;
  /** Everything, in the order of the text, and a last line when there was more than is listed. */
  finish(): readonly Diagnostic[];
}

/** `root` and `document` are the places and the values of the text that is reported about; a report without a text has neither. */
export function createReport(text = '', root?: JsonNode, document?: unknown): Report {
  const lines = createLineColumns(text);
  const found: { readonly offset: number; readonly diagnostic: Diagnostic }[] = [];
  let left = 0;
  let leftOut = false;

  function push(code: DiagnosticCode, path: JsonPath, message: string, offset: number | undefined, paste?: string) {
    if (found.length >= limits.problems) {
      left++;
      return;
    }
    const { severity } = diagnosticCodes[code];
    const place = offset === undefined ? {} : lines.at(offset);
    const where = placeWords(document, path);
    const diagnostic = {
      code,
      severity,
      path: pathText(path),
      where,
      ...place,
      message,
      ...(paste !== undefined && { paste }),
    };
    found.push({ offset: offset ?? 0, diagnostic });
  }

  return {
    add(code, path, message, offset, paste) {
      push(code, path, message, root && placeInText(text, nodeAt(root, path), offset), paste);
    },
    addAt(code, offset, message) {
      push(code, [], message, offset);
    },
    leaveOut() {
      leftOut = true;
    },
    hasErrors() {
      return left > 0 || found.some(({ diagnostic }) => diagnostic.severity === 'error');
    },
    hasLeftOut() {
      return leftOut;
    },
    finish() {
      const listed = [...found].sort((one, other) => one.offset - other.offset).map(({ diagnostic }) => diagnostic);
      if (left === 0) return listed;
      const message = `At least ${left} more ${left === 1 ? 'problem is' : 'problems are'} not listed. Mend these first and check again.`;
      return [...listed, { code: 'too-many-problems', severity: 'error', path: '(file)', where: '', message }];
    },
  };
}

/** A report that passes on only what `wanted` lets through. */
export function filterReport(report: Report, wanted: (code: DiagnosticCode, path: JsonPath) => boolean): Report {
  return {
    ...report,
    add(code, path, ...rest) {
      if (wanted(code, path)) report.add(code, path, ...rest);
    },
  };
}

/** The offset in the file of an offset inside a text value, or of the value's start when escapes blur it. */
function placeInText(text: string, node: JsonNode, offset: number | undefined): number {
  if (offset === undefined) return node.start;
  const raw = text.slice(node.start, node.end);
  return raw.startsWith('"') && !raw.includes('\\') ? node.start + 1 + offset : node.start;
}
