// How wide the letters of the printed pages are, for laying them out without a font at hand: node scripts/run-ts.mjs scripts/measure-font.ts
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';

const require = createRequire(import.meta.url);
const files = {
  regular: '@expo-google-fonts/inter/400Regular/Inter_400Regular.ttf',
  bold: '@expo-google-fonts/inter/700Bold/Inter_700Bold.ttf',
};
/** Letters of the Latin languages, and the signs that pages use. */
const letters = [...range(0x20, 0x7e), ...range(0xa0, 0x17f), ...'–—‘’“”„•…−×→½¼¾°′″✓□'].join('');

const widths = Object.fromEntries(
  Object.entries(files).map(([weight, file]) => {
    const document = new PDFDocument().font(readFileSync(require.resolve(file)));
    document.fontSize(1000);
    return [weight, [...letters].map((letter) => Math.round(document.widthOfString(letter)))];
  }),
);

writeFileSync(
  'src/render/pages/inter-widths.ts',
  `// Written by scripts/measure-font.ts, not by hand: Inter 4, advance widths in thousandths of the letter size.
export const measuredLetters = ${JSON.stringify(letters)};

export const widths_byLetter = ${JSON.stringify(widths)} as const;
`,
);

function range(from: number, to: number): readonly string[] {
  return Array.from({ length: to - from + 1 }, (_, at) => String.fromCodePoint(from + at));
}
