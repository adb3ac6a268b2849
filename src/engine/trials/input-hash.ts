/**
 * Name of some plain data: equal data gives equal text, on every machine, whatever the order in which keys were written.
 *
 * Sixteen hexadecimal digits: FNV-1a of 64 bits over the UTF-8 text of `canonicalJson`. Not against forgers; two different
 * inputs share a name by accident once in 2^64. TypeError for what is not plain data.
 * Source: Fowler, Noll and Vo, "FNV hash", isthe.com/chongo/tech/comp/fnv: offset basis and prime for 64 bits (from memory).
 */
export function inputHash(data: unknown): string {
  return fnv1a(canonicalJson(data));
}

/**
 * JSON with the keys of every object in the order of their code units and no spaces; keys whose value is undefined are
 * left out, and -0 is written 0. TypeError for numbers that are not finite and for anything that JSON has no word for.
 */
export function canonicalJson(data: unknown): string {
  if (data === null || typeof data === 'boolean' || typeof data === 'string') return JSON.stringify(data);
  if (typeof data === 'number') return finite(data);
  if (Array.isArray(data)) return `[${data.map(canonicalJson).join(',')}]`;
  if (typeof data !== 'object') throw new TypeError(`invalid input: ${typeof data} (expected plain data)`);
  const entries = Object.entries(data).filter(([, value]) => value !== undefined);
  entries.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return `{${entries.map(([key, value]) => `${JSON.stringify(key)}:${canonicalJson(value)}`).join(',')}}`;
}

function finite(value: number): string {
  if (!Number.isFinite(value)) throw new TypeError(`invalid input: ${value} (expected a finite number)`);
  return JSON.stringify(value);
}

/** The state is four words of 16 bits, lowest first: products of words stay whole in a double. */
function fnv1a(text: string): string {
  const words = [0x2325, 0x8422, 0x9ce4, 0xcbf2];
  for (let at = 0; at < text.length; at++) {
    const code = text.codePointAt(at)!;
    if (code > 0xffff) at++;
    for (const byte of bytesOf(code)) multiply(words, byte);
  }
  return [...words]
    .reverse()
    .map((word) => word.toString(16).padStart(4, '0'))
    .join('');
}

/** Take in one byte, then multiply by the prime 2^40 + 0x1b3, modulo 2^64. */
function multiply(words: number[], byte: number): void {
  const [w0, w1, w2, w3] = [words[0]! ^ byte, words[1]!, words[2]!, words[3]!];
  const p0 = w0 * 0x1b3;
  const p1 = w1 * 0x1b3 + Math.floor(p0 / 0x10000);
  // 2^40 is a shift by two words and eight bits.
  const p2 = w2 * 0x1b3 + w0 * 0x100 + Math.floor(p1 / 0x10000);
  const p3 = w3 * 0x1b3 + w1 * 0x100 + Math.floor(p2 / 0x10000);
  words[0] = p0 & 0xffff;
  words[1] = p1 & 0xffff;
  words[2] = p2 & 0xffff;
  words[3] = p3 & 0xffff;
}

/** UTF-8 of one code point. */
function bytesOf(code: number): readonly number[] {
  if (code < 0x80) return [code];
  if (code < 0x800) return [0xc0 | (code >> 6), tail(code)];
  if (code < 0x10000) return [0xe0 | (code >> 12), tail(code >> 6), tail(code)];
  return [0xf0 | (code >> 18), tail(code >> 12), tail(code >> 6), tail(code)];
}

function tail(code: number): number {
  return 0x80 | (code & 0x3f);
}
