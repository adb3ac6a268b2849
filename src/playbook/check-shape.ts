import type { z } from 'zod';
import type { JsonPath } from './json/json-node.ts';
import { nearestName } from './language/nearest-name.ts';
import type { Report } from './report.ts';
import { type Playbook, playbookSchema } from './schema.ts';

/**
 * The document when it has the shape of the schema; everything that is wrong with its shape goes to the report.
 * Phrases of the play language are only looked at as text here: the play checks say what is wrong inside them.
 */
export function checkShape(document: unknown, report: Report): Playbook | undefined {
  const result = playbookSchema.safeParse(document);
  if (result.success) return result.data;
  let onlyPhrases = true;
  for (const issue of result.error.issues) {
    const path = issue.path.filter((step) => typeof step !== 'symbol');
    if (issue.code === 'invalid_format' && isPhrase(path)) continue;
    onlyPhrases = false;
    reportIssue(issue, path, document, report);
  }
  // A document whose only faults lie inside phrases goes on to the checks that can explain them.
  return onlyPhrases ? (document as Playbook) : undefined;
}

type Issue = z.core.$ZodIssue;

/** Whether a path leads to a phrase: `on`, `do[]`, `if[]` and `then`. */
function isPhrase(path: JsonPath): boolean {
  const last = path.at(-1);
  if (typeof last === 'number') return ['do', 'if'].includes(String(path.at(-2)));
  return last === 'on' || (last === 'then' && path.at(-2) !== 'reset');
}

function reportIssue(issue: Issue, path: JsonPath, document: unknown, report: Report): void {
  const name = path.length === 0 ? 'the document' : nameOf(path);
  const value = valueAt(document, path);
  switch (issue.code) {
    case 'invalid_type':
      if (value === undefined) {
        report.add(
          'field-missing',
          path,
          `The field ${name} is missing. It should be ${kindWords[issue.expected] ?? issue.expected}.`,
        );
      } else {
        report.add(
          'field-type',
          path,
          `${capital(name)} should be ${kindWords[issue.expected] ?? issue.expected}, not ${describe(value)}.`,
        );
      }
      return;
    case 'unrecognized_keys':
      for (const key of issue.keys) {
        const known = knownFields(path);
        const near = nearestName(key, known);
        const guess = near === undefined ? '' : ` Did you mean "${near}"?`;
        report.add(
          'field-unknown',
          [...path, key],
          `${capital(name)} has no field "${shorten(key)}".${guess} Its fields are ${known.join(', ')}.`,
        );
      }
      return;
    case 'invalid_value': {
      const values = issue.values.map((each) => JSON.stringify(each));
      if (value === undefined) {
        report.add('field-missing', path, `The field ${name} is missing. It should be ${oneOf(values)}.`);
        return;
      }
      const near = typeof value === 'string' ? nearestName(value, issue.values.map(String)) : undefined;
      report.add(
        'field-value',
        path,
        `${capital(name)} should be ${oneOf(values)}, not ${describe(value)}.${near === undefined ? '' : ` Did you mean "${near}"?`}`,
      );
      return;
    }
    case 'too_small':
    case 'too_big':
      reportSize(issue, path, name, value, report);
      return;
    case 'invalid_format':
      report.add('field-form', path, `${capital(name)} cannot be ${describe(value)}. ${formWords(path)}`);
      return;
    case 'invalid_key':
      report.add(
        'field-form',
        path,
        `The name ${JSON.stringify(shorten(String(path.at(-1))))} cannot stand here. ${formWords(path)}`,
      );
      return;
    case 'invalid_union':
      report.add(
        'field-type',
        path,
        `${capital(name)} should be a number, true, false or null, not ${describe(value)}.`,
      );
      return;
    default:
      report.add('field-type', path, `${capital(name)} is not as it should be: ${issue.message}.`);
  }
}

function reportSize(
  issue: Extract<Issue, { code: 'too_small' | 'too_big' }>,
  path: JsonPath,
  name: string,
  value: unknown,
  report: Report,
): void {
  const small = issue.code === 'too_small';
  const bound = Number(small ? issue.minimum : issue.maximum);
  if (issue.origin === 'string') {
    report.add(
      'field-length',
      path,
      small
        ? `${capital(name)} should not be empty.`
        : `${capital(name)} is longer than ${bound} characters. Shorten it.`,
    );
  } else if (issue.origin === 'array') {
    const length = Array.isArray(value) ? value.length : 0;
    report.add(
      'field-length',
      path,
      `${capital(name)} should hold ${small ? 'at least' : 'at most'} ${bound}, and holds ${length}.`,
    );
  } else {
    const edge = small ? (issue.inclusive ? 'at least' : 'more than') : issue.inclusive ? 'at most' : 'less than';
    report.add('field-range', path, `${capital(name)} should be ${edge} ${bound}, not ${describe(value)}.`);
  }
}

const kindWords: Readonly<Record<string, string>> = {
  string: 'a text in quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list in [ ]',
  tuple: 'two numbers [x, y]',
  object: 'an object in { }',
  record: 'an object in { }',
  never: 'left out',
};

/** How short names are written, by the field that holds one. */
function formWords(path: JsonPath): string {
  const last = String(path.at(-1));
  const place = String(path.at(-2));
  if (['ball', 'carrier'].includes(last) || ['spots', 'depth'].includes(place)) {
    return 'A spot is one to four capital letters and digits, beginning with a letter, like TR or X.';
  }
  if (['men', 'shortSticks', 'discipline'].includes(place))
    return 'A defender is one to four small letters and digits, beginning with a letter, like tr or c.';
  return 'An id is made of small letters, digits and dashes, like quick-swing.';
}

/** The last named field of a path, with the number of the list item when it is one: `beats[2]`. */
function nameOf(path: JsonPath): string {
  const last = path.at(-1);
  if (typeof last === 'number') return `${String(path.at(-2) ?? 'item')}[${last}]`;
  return `"${shorten(String(last))}"`;
}

/** The fields that may stand in the object at a path, from the schema itself. */
function knownFields(path: JsonPath): readonly string[] {
  let schema: unknown = playbookSchema;
  for (const step of path) schema = child(bare(schema), step);
  const shape = (bare(schema) as { shape?: object } | undefined)?.shape;
  return shape === undefined ? [] : Object.keys(shape);
}

function bare(schema: unknown): unknown {
  let inner = schema as { unwrap?: () => unknown; element?: unknown } | undefined;
  // Arrays have unwrap too, which would step into them.
  while (inner !== undefined && typeof inner.unwrap === 'function' && inner.element === undefined)
    inner = inner.unwrap() as typeof inner;
  return inner;
}

function child(schema: unknown, step: string | number): unknown {
  const parent = schema as { shape?: Record<string, unknown>; element?: unknown; valueType?: unknown } | undefined;
  if (parent === undefined) return undefined;
  if (typeof step === 'number') return parent.element;
  return parent.shape?.[step] ?? parent.valueType;
}

function valueAt(document: unknown, path: JsonPath): unknown {
  let value = document;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}

function describe(value: unknown): string {
  if (typeof value === 'string') return `the text "${shorten(value)}"`;
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}

function oneOf(values: readonly string[]): string {
  return values.length === 1 ? values[0]! : `one of ${values.join(', ')}`;
}

function shorten(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 40)}...`;
}

function capital(text: string): string {
  return text[0]!.toUpperCase() + text.slice(1);
}
