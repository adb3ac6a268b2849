import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { PageFonts } from '../../press/index.ts';

const { resolve } = createRequire(import.meta.url);

/** Files of the letters of our pages: Inter, SIL Open Font License 1.1. */
export const pageFontFiles = {
  regular: resolve('@expo-google-fonts/inter/400Regular/Inter_400Regular.ttf'),
  bold: resolve('@expo-google-fonts/inter/700Bold/Inter_700Bold.ttf'),
} as const;

/** The letters themselves, for what puts them into a file. */
export function readPageFonts(): PageFonts {
  return { regular: readFileSync(pageFontFiles.regular), bold: readFileSync(pageFontFiles.bold) };
}
