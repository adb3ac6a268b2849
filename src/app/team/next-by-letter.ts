/**
 * The value of the next option whose text begins with a letter, from the chosen one on and round; undefined when there is none, or the key is no letter.
 *
 * With 10U, 12U and 14U, "1" goes to 12U from 10U, and to 10U from 14U.
 */
export function nextByLetter(
  options: readonly { readonly value: string; readonly text: string }[],
  chosen: string,
  key: string,
): string | undefined {
  if (key.length !== 1 || key.trim() === '') return undefined;
  const from = options.findIndex(({ value }) => value === chosen) + 1;
  const round = [...options.slice(from), ...options.slice(0, from)];
  return round.find(({ text }) => text.toLowerCase().startsWith(key.toLowerCase()))?.value;
}
