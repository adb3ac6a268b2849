import type * as z from 'zod/mini';
import { type JsonPath, valueAt } from './json/json-node.ts';
import { nearestName } from './language/nearest-name.ts';
import { mendShape, type ShapeFault } from './mend-shape.ts';
import type { Report } from './report.ts';
import { type Playbook, playbookSchema } from './schema.ts';
import { schemaAt, withoutOptional } from './schema-walk.ts';

/** A document in the shape of a playbook, and where it was not in that shape. */
export interface Shaped {
  readonly playbook: Playbook;
  /** Values that stand for others which were of the wrong kind: nothing that hangs on them means anything. */
  readonly broken: readonly JsonPath[];
  /** Objects that had fields which nobody knows: something that was meant may be missing in them. */
  readonly doubtful: readonly JsonPath[];
}

/**
 * The document in the shape of the schema; everything that is wrong with its shape goes to the report, and is replaced by something
 * that is not wrong. Phrases of the play language are only looked at as text here: the play checks say what is wrong inside them.
 * Undefined when hardly anything is as it should be.
 */
export function checkShape(document: object, report: Report): Shaped | undefined {
  const result = playbookSchema.safeParse(document);
  if (result.success) return { playbook: result.data, broken: [], doubtful: [] };
  const broken: JsonPath[] = [];
  const doubtful: JsonPath[] = [];
  const faults: ShapeFault[] = [];
  for (const issue of result.error.issues) {
    const path = issue.path.filter((step) => typeof step !== 'symbol');
    if (issue.code === 'invalid_format' && isPhrase(path)) continue;
    reportIssue(issue, path, document, report);
    if (issue.code === 'unrecognized_keys') doubtful.push(path);
    else broken.push(path);
    faults.push({
      path,
      ...(issue.code === 'unrecognized_keys' && { extraFields: issue.keys }),
      ...(issue.code === 'too_big' && issue.origin === 'array' && { most: Number(issue.maximum) }),
    });
  }
  // A document whose only faults lie inside phrases goes on to the checks that can explain them.
  if (faults.length === 0) return { playbook: document as Playbook, broken, doubtful };
  if (faults.length > mostMended) return undefined;
  const mended = mendShape(document, faults);
  const left = playbookSchema.safeParse(mended).error?.issues ?? [];
  const isMended = left.every((issue) => mayStay(issue, broken));
  return isMended ? { playbook: mended as Playbook, broken, doubtful } : undefined;
}

/** With more faults of shape than this the file is something else, or broken through and through. */
const mostMended = 100;

/** Whether a fault that is left after mending is none of kind: a phrase, or a text or list that stands for nothing. */
function mayStay(issue: Issue, broken: readonly JsonPath[]): boolean {
  const path = issue.path.filter((step) => typeof step !== 'symbol');
  if (issue.code === 'invalid_format' && isPhrase(path)) return true;
  const isEmpty = issue.code === 'invalid_format' || issue.code === 'too_small';
  return isEmpty && broken.some((one) => one.every((step, i) => path[i] === step));
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
        `${capital(name)} should be a number, true, false or null, not ${describe(value)}. For yes and no write true and false, for "there is none" null.`,
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

/** What the items of a list are called; which one it is stands before the message. */
const itemWords: Readonly<Record<string, string>> = {
  roster: 'the player',
  sets: 'the set',
  plays: 'the play',
  beats: 'the step',
  reads: 'the read',
  schemes: 'the scheme',
  rows: 'the row',
  opponents: 'the opponent',
};

/** The last named field of a path, or what the list item is: `"hand"`, `the beat`, `entry 2 of "do"`. */
function nameOf(path: JsonPath): string {
  const last = path.at(-1);
  if (typeof last === 'number') {
    const list = String(path.at(-2));
    return itemWords[list] ?? `entry ${last + 1} of "${shorten(list)}"`;
  }
  return `"${shorten(String(last))}"`;
}

/** The fields that may stand in the object at a path, from the schema itself. */
function knownFields(path: JsonPath): readonly string[] {
  return Object.keys(withoutOptional(schemaAt(path))?.def.shape ?? {});
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
