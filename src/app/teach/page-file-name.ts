/** Longest part of a file's name that is made of words, letters. */
const longest = 80;

/** The name of a file of pages: `lantern-play-sheet.pdf`. Of any script letters and digits stay. */
export function pageFileName(about: string, title: string, ending: string): string {
  const kind = title.includes(': ') ? title.slice(title.lastIndexOf(': ') + 2) : '';
  const words = `${about} ${kind}`
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, longest)
    .replace(/^-+|-+$/g, '');
  return `${words || 'pages'}.${ending}`;
}
