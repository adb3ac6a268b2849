/** Opening quotes that are not JSON's, with what closes them. */
export const foreignQuotes: Readonly<Record<string, string>> = {
  "'": "'",
  '\u201c': '\u201d',
  '\u201d': '\u201d',
  '\u201e': '\u201d',
  '\u2018': '\u2019',
  '\u2019': '\u2019',
  '`': '`',
};

/** What may follow a backslash in a JSON text, and what it stands for; \u is read apart. */
export const escapes: Readonly<Record<string, string>> = {
  '"': '"',
  '\\': '\\',
  '/': '/',
  b: '\b',
  f: '\f',
  n: '\n',
  r: '\r',
  t: '\t',
};
