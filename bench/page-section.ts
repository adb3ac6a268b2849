/** Where the part that `npm run bench:app` writes begins; it is the last of the page. */
export const appHeading = '## The workbench';

/** The page with a new first part, or a new last one; the other stays as it was. Either may be missing yet. */
export function replacePart(page: string, part: 'engine' | 'app', text: string): string {
  const begins = page.startsWith(appHeading) ? 0 : page.indexOf(`\n${appHeading}\n`) + 1;
  const hasApp = page.startsWith(appHeading) || begins > 0;
  const engine = hasApp ? page.slice(0, begins) : page;
  const app = hasApp ? page.slice(begins) : '';
  const parts = part === 'engine' ? [text, app] : [engine, text];
  return `${parts
    .map((one) => one.trim())
    .filter((one) => one !== '')
    .join('\n\n')}\n`;
}
