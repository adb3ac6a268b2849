import type * as z from 'zod/mini';
import { type JsonPath, valueAt } from './json/json-node.ts';
import { type Playbook, playbookSchema } from './schema.ts';
import { schemaAt, withoutOptional } from './schema-walk.ts';

/**
 * Whether a value has every part of a playbook, each of the right kind: enough to show and to edit it, not to simulate it. Texts may be empty or half
 * typed, numbers out of range and lists too long, as they are while somebody writes; `parsePlaybook` says what is wrong with them.
 */
export function isPlaybookShaped(value: unknown): value is Playbook {
  return allMayBeTyped(playbookSchema, value, [], value);
}

function allMayBeTyped(schema: z.ZodMiniType, value: unknown, path: JsonPath, document: unknown): boolean {
  const issues = schema.safeParse(value).error?.issues ?? [];
  return issues.every((issue) => {
    const rest = issue.path.filter((step) => typeof step !== 'symbol');
    return mayBeTyped(issue, [...path, ...rest], document);
  });
}

function mayBeTyped(issue: z.core.$ZodIssue, path: JsonPath, document: unknown): boolean {
  switch (issue.code) {
    case 'invalid_format':
    case 'invalid_key':
    case 'unrecognized_keys':
      return true;
    case 'too_small':
    case 'too_big': {
      if (issue.origin !== 'array') return true;
      const item = withoutOptional(schemaAt(path))?.def.element as z.ZodMiniType | undefined;
      const list = valueAt(document, path);
      // A place of one number is no place.
      if (item === undefined || !Array.isArray(list)) return false;
      // The schema does not look into a list that is too long.
      return list.every((one, index) => allMayBeTyped(item, one, [...path, index], document));
    }
    case 'invalid_type':
      // A number that should be whole; NaN and the infinities are no numbers of a document.
      return issue.expected === 'int' && Number.isFinite(valueAt(document, path));
    default:
      return false;
  }
}
