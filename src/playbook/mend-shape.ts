import type { JsonPath } from './json/json-node.ts';
import { type SchemaNode, schemaAt, withoutOptional } from './schema-walk.ts';

/** A fault of the document's shape: the value at the path, or the fields in it that do not belong there. */
export interface ShapeFault {
  readonly path: JsonPath;
  readonly extraFields?: readonly string[];
  /** The list at the path holds more than this. */
  readonly most?: number;
}

/**
 * A copy of a document in which everything that is not as it should be is taken out, or replaced by something that is: so that the rest
 * can be checked. Items of lists keep their places. What was replaced means nothing; the caller must not report about it.
 */
export function mendShape(document: object, faults: readonly ShapeFault[]): object {
  const mended = JSON.parse(JSON.stringify(document)) as object;
  // Outer values first: what lies in a value that is replaced as a whole is gone with it.
  const sorted = [...faults].sort((one, other) => one.path.length - other.path.length);
  for (const { path, extraFields, most } of sorted) {
    if (most !== undefined) cutAt(mended, path, most);
    else if (extraFields === undefined) replaceAt(mended, path);
    else for (const field of extraFields) removeAt(mended, [...path, field]);
  }
  return mended;
}

type Container = Record<string | number, unknown>;

function replaceAt(document: object, path: JsonPath): void {
  const last = path.at(-1);
  const parent = last === undefined ? undefined : containerAt(document, path.slice(0, -1));
  if (parent === undefined || last === undefined) return;
  const schema = schemaAt(path);
  if (typeof last === 'string' && (schema === undefined || schema.def.type === 'optional' || !isField(path))) {
    delete parent[last];
    return;
  }
  parent[last] = standIn(schema, path);
}

function cutAt(document: object, path: JsonPath, most: number): void {
  const list = containerAt(document, path);
  // A place of three numbers is no list of which the first two could be kept.
  if (!Array.isArray(list) || schemaAt(path)?.def.element === undefined) replaceAt(document, path);
  else list.length = Math.min(list.length, most);
}

function removeAt(document: object, path: JsonPath): void {
  const parent = containerAt(document, path.slice(0, -1));
  if (parent !== undefined) delete parent[path.at(-1)!];
}

/** Whether a path leads to a field that its object must have, rather than to an entry of a record. */
function isField(path: JsonPath): boolean {
  return withoutOptional(schemaAt(path.slice(0, -1)))?.def.shape !== undefined;
}

function containerAt(document: object, path: JsonPath): Container | undefined {
  let value: unknown = document;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Container)[step];
  }
  return typeof value === 'object' && value !== null ? (value as Container) : undefined;
}

/** Some value of the right kind. */
function standIn(schema: SchemaNode | undefined, path: JsonPath): unknown {
  const bare = withoutOptional(schema);
  switch (bare?.def.type) {
    case 'object': {
      const fields = Object.entries(bare.def.shape ?? {}).filter(([, field]) => field.def.type !== 'optional');
      return Object.fromEntries(fields.map(([name, field]) => [name, standIn(field, [...path, name])]));
    }
    case 'record':
      return {};
    case 'array':
      return [];
    case 'tuple':
      return [...outsideTheBox];
    case 'enum':
      // The last level plays men up; the first does not.
      return Object.values(bare.def.entries ?? {}).at(-1);
    case 'literal':
      return bare.def.values?.[0];
    case 'string':
      // Ids and numbers of the same kind must differ.
      return path.at(-1) === 'id' ? `mended-${path.join('-').toLowerCase()}` : '';
    default:
      return path.at(-1) === 'number' ? unusedNumber + Number(path.at(-2)) : 0;
  }
}

/** A place that is allowed for men and for a restart, yd. */
const outsideTheBox = [0, 22] as const;
/** No player wears it or a higher one. */
const unusedNumber = 1000;
