import { checkPlaybook } from './check-playbook.ts';
import { checkShape } from './check-shape.ts';
import type { Diagnostic } from './diagnostic.ts';
import type { JsonNode } from './json/json-node.ts';
import { readJson } from './json/read-json.ts';
import { limits } from './limits.ts';
import { migrate } from './migrate.ts';
import { createReport, type Report } from './report.ts';
import type { Playbook } from './schema.ts';

export interface ParseResult {
  /** The playbook, when it has no errors (it may have warnings and notes). */
  readonly value?: Playbook;
  /** All problems of the file, in the order of its text. */
  readonly diagnostics: readonly Diagnostic[];
  /** Something could not be checked because of the errors that are listed: there may be more. */
  readonly moreMayShow: boolean;
}

/**
 * Reads a playbook file. Never throws, whatever the text: every problem is a diagnostic, and all are found at once.
 *
 * Files over 5 MB are refused before they are read; depth and counts are capped while reading.
 */
export function parsePlaybook(text: string): ParseResult {
  if (isLargerThan(text, limits.bytes)) {
    const report = createReport();
    report.add(
      'file-too-large',
      [],
      `The file is larger than ${limits.bytes / 1_000_000} MB. No playbook is; look whether it is the right file.`,
    );
    return { diagnostics: report.finish(), moreMayShow: true };
  }
  const reading = readJson(text);
  const report = createReport(text, reading.root, reading.value);
  for (const problem of reading.problems) report.addAt(problem.code, problem.offset, problem.message);
  if (reading.root === undefined) return { diagnostics: report.finish(), moreMayShow: true };
  const value = readDocument(reading.value, reading.root, report);
  const diagnostics = report.finish();
  const moreMayShow = report.hasLeftOut();
  return value === undefined || report.hasErrors() ? { diagnostics, moreMayShow } : { value, diagnostics, moreMayShow };
}

function readDocument(document: unknown, root: JsonNode, report: Report): Playbook | undefined {
  if (typeof document !== 'object' || document === null || root.members === undefined) {
    report.add(
      'format-wrong',
      [],
      'A playbook is an object: the file must begin with { and "format": "sliderule-playbook".',
    );
    report.leaveOut();
    return undefined;
  }
  const fields = document as Readonly<Record<string, unknown>>;
  if (fields.format !== format) {
    const found = fields.format === undefined ? 'has no "format"' : 'has another "format"';
    report.add('format-wrong', ['format'], `The file ${found}. A playbook says "format": "${format}".`);
  }
  const migrated = migrate(fields);
  if (migrated.kind === 'newer') {
    report.add(
      'version-newer',
      ['version'],
      `The file is version ${migrated.version} of the format, and this program knows version 1. Get the newer program to open it.`,
    );
    report.leaveOut();
    return undefined;
  }
  if (migrated.kind === 'invalid')
    report.add('version-wrong', ['version'], 'The file needs "version": 1, a whole number.');
  // Two faults that were just told would only be told again.
  const checked = { ...(migrated.kind === 'current' ? migrated.value : fields), format, version: 1 };
  const shaped = checkShape(checked, report);
  if (shaped === undefined) {
    report.leaveOut();
    return undefined;
  }
  checkPlaybook(shaped, report);
  return shaped.playbook;
}

const format = 'sliderule-playbook';

/** Whether the text takes more bytes as UTF-8; stops counting as soon as it knows. */
function isLargerThan(text: string, bytes: number): boolean {
  if (text.length > bytes) return true;
  // No UTF-16 unit takes more than three bytes, so most files need no count.
  if (text.length * 3 <= bytes) return false;
  let size = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    // Half of a surrogate pair is two of its four bytes.
    size += code < 0x80 ? 1 : code < 0x800 || (code >= 0xd800 && code <= 0xdfff) ? 2 : 3;
    if (size > bytes) return true;
  }
  return false;
}
