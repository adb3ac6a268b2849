/** Breaks a text at spaces into lines of at most `width` letters; a longer word stands alone on its line. */
export function wrapParagraph(content: string, width: number): string {
  const lines: string[] = [];
  let current = '';
  // A number and its unit stay together: "0.4 s", "86 %".
  for (const word of content
    .replace(/(\d) (s|%|yd)\b/g, '$1\u00a0$2')
    .replace(/(\d) %/g, '$1\u00a0%')
    .split(/[ \n]+/)) {
    if (word === '') continue;
    const longer = current === '' ? word : `${current} ${word}`;
    if (longer.length > width && current !== '') {
      lines.push(current);
      current = word;
    } else {
      current = longer;
    }
  }
  return [...lines, current].join('\n').replaceAll('\u00a0', ' ');
}
