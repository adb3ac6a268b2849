import { escapeXml } from '../svg.ts';

/** What a page with a program of its own is made of. */
export interface ProgramPage {
  readonly title: string;
  readonly style: string;
  /** HTML between the tags of the body. */
  readonly body: string;
  /** What the program reads, and the id of the element that it stands in. */
  readonly data: unknown;
  readonly dataId: string;
  readonly script: string;
  /** SHA-256 of a text in base64: by it alone the page's own program and style are let in. */
  readonly hashOf: (text: string) => Promise<string>;
}

/**
 * One whole page that works wherever it is opened, without a network: it holds everything it needs, and its own rules forbid it to ask for anything more. RangeError for a
 * script that would end its own element.
 */
export async function pageWithProgram({
  title,
  style,
  body,
  data,
  dataId,
  script,
  hashOf,
}: ProgramPage): Promise<string> {
  if (/<\/script/i.test(script)) throw new RangeError('the script of a page may not hold the end of its own element');
  const [scriptHash, styleHash] = await Promise.all([hashOf(script), hashOf(style)]);
  const rules = `default-src 'none'; script-src 'sha256-${scriptHash}'; style-src 'sha256-${styleHash}'; base-uri 'none'; form-action 'none'`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${rules}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeXml(title)}</title>
<style>${style}</style>
</head>
<body>
${body}
<script type="application/json" id="${dataId}">${jsonInPage(data)}</script>
<script>${script}</script>
</body>
</html>
`;
}

/** JSON that no parser of HTML takes for a tag. */
function jsonInPage(data: unknown): string {
  return JSON.stringify(data).replaceAll('<', '\\u003c');
}
