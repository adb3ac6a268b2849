import { expect, it } from 'vitest';
import { printable } from './printable.ts';

it.each([
  ['plain\n\ttext é ± 字', 'plain\n\ttext é ± 字'],
  ['\u001b[2Jgone', '?[2Jgone'],
  ['\u009b31m', '?31m'],
  ['a\u0007b\u0008c\u007f', 'a?b?c?'],
  ['\u202egnp.exe', '?gnp.exe'],
  ['\r overwrites', '? overwrites'],
  ['\ud800', '?'],
  ['\u{1f945}', '\u{1f945}'],
])('shows %j as %j', (raw, shown) => {
  expect(printable(raw)).toBe(shown);
});
