import regular from '@expo-google-fonts/inter/400Regular/Inter_400Regular.ttf?url';
import bold from '@expo-google-fonts/inter/700Bold/Inter_700Bold.ttf?url';
import type { PageFonts } from '../../press/index.ts';

let letters: Promise<PageFonts> | undefined;

/** The letters that go into a file of pages; read once. Rejects when they cannot be had. */
export function pageLetters(): Promise<PageFonts> {
  letters ??= readLetters().catch((error: unknown) => {
    // Tried anew the next time.
    letters = undefined;
    throw error;
  });
  return letters;
}

async function readLetters(): Promise<PageFonts> {
  const [ordinary, heavy] = await Promise.all([bytesOf(regular), bytesOf(bold)]);
  return { regular: ordinary, bold: heavy };
}

async function bytesOf(address: string): Promise<Uint8Array> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error('the letters of the page could not be read');
  return new Uint8Array(await answer.arrayBuffer());
}
