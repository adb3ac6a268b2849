/** Turns offsets into lines and columns, both counted from 1; a tab is one column. CRLF, LF and CR each end one line. */
export interface LineColumns {
  at(offset: number): { readonly line: number; readonly column: number };
}

export function createLineColumns(text: string): LineColumns {
  const starts = [0];
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === 10 || (code === 13 && text.charCodeAt(i + 1) !== 10)) starts.push(i + 1);
  }
  return {
    at(offset) {
      let low = 0;
      let high = starts.length - 1;
      while (low < high) {
        const middle = (low + high + 1) >> 1;
        if (starts[middle]! <= offset) low = middle;
        else high = middle - 1;
      }
      // A byte order mark before the first line is not a column that an editor shows.
      const mark = low === 0 && text.charCodeAt(0) === 0xfeff && offset > 0 ? 1 : 0;
      return { line: low + 1, column: offset - starts[low]! + 1 - mark };
    },
  };
}
