import latinExtended from '@fontsource-variable/inter/files/inter-latin-ext-wght-normal.woff2?url';
import latin from '@fontsource-variable/inter/files/inter-latin-wght-normal.woff2?url';
import { filmFont } from '../../../render/index.ts';

/** The letters that the page's style sheet has, for a thread, which has none of its own: the same files, and which letters are in which. */
const files = [
  {
    address: latin,
    letters:
      'U+0000-00FF,U+0131,U+0152-0153,U+02BB-02BC,U+02C6,U+02DA,U+02DC,U+0304,U+0308,U+0329,U+2000-206F,U+20AC,U+2122,U+2191,U+2193,U+2212,U+2215,U+FEFF,U+FFFD',
  },
  {
    address: latinExtended,
    letters:
      'U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+0304,U+0308,U+0329,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113,U+2C60-2C7F,U+A720-A7FF',
  },
] as const;

/** Loads the letters of a film into `fonts`, the set of this thread. Letters that cannot be had are drawn in the device's own: a film without them is one too. */
export async function loadFilmLetters(fonts: FontFaceSet): Promise<void> {
  const family = filmFont.split(',')[0]!;
  const faces = files.map(
    ({ address, letters }) =>
      new FontFace(family, `url(${new URL(address, import.meta.url).href})`, {
        weight: '100 900',
        unicodeRange: letters,
      }),
  );
  const loaded = await Promise.allSettled(faces.map((face) => face.load()));
  for (const one of loaded) if (one.status === 'fulfilled') fonts.add(one.value);
}
