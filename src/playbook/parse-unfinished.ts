import { readJson } from './json/read-json.ts';
import { migrate } from './migrate.ts';
import { type ParseResult, parsePlaybook } from './parse.ts';
import { isPlaybookShaped } from './playbook-shape.ts';

/**
 * Reads a playbook file as `parsePlaybook` does, but gives its value also when it is an unfinished playbook: one with errors, of which every part is
 * there and of the right kind. What somebody exports in the middle of a sentence can be opened again. Never throws.
 */
export function parseUnfinished(text: string): ParseResult {
  const result = parsePlaybook(text);
  if (result.value !== undefined) return result;
  // What cannot be read, or not be trusted, as text gives no value, whatever could be made out of it.
  if (result.diagnostics.some(({ code }) => code.startsWith('json-') || code === 'file-too-large')) return result;
  const { value } = readJson(text);
  if (typeof value !== 'object' || value === null) return result;
  const migrated = migrate(value as Readonly<Record<string, unknown>>);
  if (migrated.kind !== 'current' || !isPlaybookShaped(migrated.value)) return result;
  return { ...result, value: migrated.value };
}
