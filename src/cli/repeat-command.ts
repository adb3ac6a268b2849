/** A command line that a shell reads back as these words: quoted where a word holds anything but plain letters. */
export function shellCommand(words: readonly string[]): string {
  return words.map(shellWord).join(' ');
}

function shellWord(word: string): string {
  return /^[\w@%+=:,./-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`;
}
