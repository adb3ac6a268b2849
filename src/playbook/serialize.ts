import type { Playbook } from './schema.ts';

/** A list or object that fits into this many columns stands on one line. */
const width = 110;

/**
 * The playbook as the text of a file: two spaces of indent, short lists and objects on one line, a line feed at the end.
 * Reading it gives an equal playbook, and the same playbook always gives the same text.
 */
export function serializePlaybook(playbook: Playbook): string {
  return `${print(playbook, '', 0, 0)}\n`;
}

/** Any plain JSON value in the playbook's layout. `used` is how many columns stand before it on its line. */
function print(value: unknown, indent: string, used: number, depth: number): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const flat = printFlat(value);
  // The document itself and its parts always spread out; only what lies in them is folded.
  if (depth > 0 && used + flat.length <= width) return flat;
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    return `[\n${value.map((item) => `${inner}${print(item, inner, inner.length + 1, depth + 1)}`).join(',\n')}\n${indent}]`;
  }
  const lines = members(value).map(([name, member]) => {
    const head = `${inner}${JSON.stringify(name)}: `;
    return `${head}${print(member, inner, head.length + 1, depth + 1)}`;
  });
  return lines.length === 0 ? '{}' : `{\n${lines.join(',\n')}\n${indent}}`;
}

function printFlat(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(printFlat).join(', ')}]`;
  const inside = members(value).map(([name, member]) => `${JSON.stringify(name)}: ${printFlat(member)}`);
  return inside.length === 0 ? '{}' : `{ ${inside.join(', ')} }`;
}

/** A member that is undefined is not there, as in JSON itself. */
function members(value: object): readonly (readonly [string, unknown])[] {
  return Object.entries(value).filter(([, member]) => member !== undefined);
}
