/** A value's place in the text, with the places of what is inside it. Offsets count UTF-16 units from the file's start. */
export interface JsonNode {
  readonly start: number;
  readonly end: number;
  /** Where the name before the value starts; absent for list items and the document itself. */
  readonly nameStart?: number;
  readonly members?: ReadonlyMap<string, JsonNode>;
  readonly items?: readonly JsonNode[];
}

/** The way to a value: names of members and numbers of list items (from 0). */
export type JsonPath = readonly (string | number)[];

/** The node at a path, or the deepest one on the way to it when the path leaves the document. */
export function nodeAt(root: JsonNode, path: JsonPath): JsonNode {
  let node = root;
  for (const step of path) {
    const next = typeof step === 'number' ? node.items?.[step] : node.members?.get(step);
    if (next === undefined) return node;
    node = next;
  }
  return node;
}

/** The value at a path of a parsed document; undefined when the path leaves it. Only own fields are followed. */
export function valueAt(document: unknown, path: JsonPath): unknown {
  let value = document;
  for (const step of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step)) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}

/** A path as people read it: `pathText(['plays', 0, 'beats', 2])` is 'plays[0].beats[2]'; the document itself is '(file)'. */
export function pathText(path: JsonPath): string {
  if (path.length === 0) return '(file)';
  return path
    .map((step) =>
      typeof step === 'number'
        ? `[${step}]`
        : /^[A-Za-z_][\w-]*$/.test(step)
          ? `.${step}`
          : `[${JSON.stringify(step)}]`,
    )
    .join('')
    .replace(/^\./, '');
}
