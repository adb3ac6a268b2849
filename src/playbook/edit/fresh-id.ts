import { limits } from '../limits.ts';

/**
 * An id made of a name, that none of those taken is: small letters, digits and dashes.
 *
 * `freshId('Trägheit #2', ['tragheit-2'], 'play')` is 'tragheit-2-2'; a name without a letter or digit gives `fallback`.
 */
export function freshId(name: string, taken: Iterable<string>, fallback: string): string {
  const known = new Set(taken);
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, limits.id - longestEnding)
    .replace(/^-+|-+$/g, '');
  const stem = plain === '' ? fallback : plain;
  if (!known.has(stem)) return stem;
  for (let number = 2; ; number++) if (!known.has(`${stem}-${number}`)) return `${stem}-${number}`;
}

/** Letters that are left free for "-123". */
const longestEnding = 4;
