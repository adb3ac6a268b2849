import type { z } from 'zod';
import { type JsonPath, valueAt } from './json/json-node.ts';
import { type Playbook, playbookSchema } from './schema.ts';
import { schemaAt, withoutOptional } from './schema-walk.ts';

/**
 * Whether a value has every part of a playbook, each of the right kind: enough to show and to edit it, not to simulate it. Texts may be empty or half
 * typed, numbers out of range and lists too long, as they are while somebody writes; `parsePlaybook` says what is wrong with them.
 */
export function isPlaybookShaped(value: unknown): value is Playbook {
  const issues = playbookSchema.safeParse(value).error?.issues ?? [];
  return issues.every((issue) => mayBeTyped(issue, value));
}

function mayBeTyped(issue: z.core.$ZodIssue, document: unknown): boolean {
  const path: JsonPath = issue.path.filter((step) => typeof step !== 'symbol');
  switch (issue.code) {
    case 'invalid_format':
    case 'invalid_key':
    case 'unrecognized_keys':
      return true;
    case 'too_small':
    case 'too_big':
      // A place of one number is no place.
      return issue.origin !== 'array' || withoutOptional(schemaAt(path))?.element !== undefined;
    case 'invalid_type':
      // A number that should be whole; NaN and the infinities are no numbers of a document.
      return issue.expected === 'int' && Number.isFinite(valueAt(document, path));
    default:
      return false;
  }
}
