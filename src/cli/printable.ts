/**
 * Text that a terminal only shows and never obeys: control characters other than line end and tab become "?", and so do
 * the marks that turn the direction of writing. A playbook from someone else may hold any of them in its names.
 */
export function printable(content: string): string {
  return [...content].map((letter) => (isSafe(letter.codePointAt(0) ?? 0) ? letter : '?')).join('');
}

function isSafe(code: number): boolean {
  if (code < 0x20) return code === 0x0a || code === 0x09;
  // Unicode: C1 controls, bidirectional embeddings and overrides, bidirectional isolates, lone surrogates.
  if (code >= 0x7f && code <= 0x9f) return false;
  if ((code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069)) return false;
  return code < 0xd800 || code > 0xdfff;
}
