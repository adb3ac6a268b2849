import type { JsonPath } from './json/json-node.ts';
import { playbookSchema } from './schema.ts';

/** A schema as far as the walks below look into it. */
export interface SchemaNode {
  readonly def: {
    readonly type: string;
    /** Of what may be left out. */
    readonly innerType?: SchemaNode;
    /** Of a list. */
    readonly element?: SchemaNode;
    /** Of an object with known fields. */
    readonly shape?: Readonly<Record<string, SchemaNode>>;
    /** Of an object with any names. */
    readonly valueType?: SchemaNode;
    readonly entries?: object;
    readonly values?: readonly unknown[];
  };
}

/** The schema of the value at a path of a playbook, with whatever makes it optional still round it. */
export function schemaAt(path: JsonPath): SchemaNode | undefined {
  let schema: SchemaNode | undefined = playbookSchema as unknown as SchemaNode;
  for (const step of path) {
    const parent: SchemaNode['def'] | undefined = withoutOptional(schema)?.def;
    if (parent === undefined) return undefined;
    schema = typeof step === 'number' ? parent.element : (parent.shape?.[step] ?? parent.valueType);
  }
  return schema;
}

export function withoutOptional(schema: SchemaNode | undefined): SchemaNode | undefined {
  let inner = schema;
  while (inner?.def.innerType !== undefined) inner = inner.def.innerType;
  return inner;
}
