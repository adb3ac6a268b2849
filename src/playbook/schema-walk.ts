import type { JsonPath } from './json/json-node.ts';
import { playbookSchema } from './schema.ts';

/** A schema as far as the walks below look into it. */
export interface SchemaNode {
  readonly unwrap?: () => SchemaNode;
  readonly element?: SchemaNode;
  readonly shape?: Readonly<Record<string, SchemaNode>>;
  readonly valueType?: SchemaNode;
  readonly def?: { readonly type: string; readonly entries?: object; readonly values?: readonly unknown[] };
}

/** The schema of the value at a path of a playbook, with whatever makes it optional still round it. */
export function schemaAt(path: JsonPath): SchemaNode | undefined {
  let schema: SchemaNode | undefined = playbookSchema as unknown as SchemaNode;
  for (const step of path) {
    const parent: SchemaNode | undefined = withoutOptional(schema);
    if (parent === undefined) return undefined;
    schema = typeof step === 'number' ? parent.element : (parent.shape?.[step] ?? parent.valueType);
  }
  return schema;
}

export function withoutOptional(schema: SchemaNode | undefined): SchemaNode | undefined {
  let inner = schema;
  // Arrays have unwrap too, which would step into them.
  while (inner !== undefined && typeof inner.unwrap === 'function' && inner.element === undefined)
    inner = inner.unwrap();
  return inner;
}
