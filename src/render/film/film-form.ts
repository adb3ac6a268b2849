/** A rectangle of the picture, px from its left upper corner. */
export interface FilmBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Sizes of letters, px of the picture. */
export interface FilmLetters {
  /** The play's name, and the scheme's, on the title. */
  readonly title: number;
  readonly titleScheme: number;
  /** Who plays where. */
  readonly men: number;
  /** The same while it plays, and the clock. */
  readonly head: number;
  readonly scheme: number;
  /** What happens now: the largest of these in which all of it has room. */
  readonly said: readonly number[];
  /** What happened before. */
  readonly past: number;
  readonly small: number;
}

/** How a film's picture is laid out: the field, as large as it goes, and the words beside or below it. Whole and even px. */
export interface FilmForm {
  readonly width: number;
  readonly height: number;
  readonly field: FilmBox;
  readonly words: FilmBox;
  readonly letters: FilmLetters;
  /** Free border inside the words' part. */
  readonly margin: number;
  /** Height kept for what happens now, so that nothing below it jumps. */
  readonly saidHeight: number;
  /** Men on a line of the title. */
  readonly menOnALine: number;
  /** Whether what the marks mean is told below. */
  readonly legend: boolean;
}

export const filmFormNames = ['wide', 'tall', 'card'] as const;
export type FilmFormName = (typeof filmFormNames)[number];

/**
 * `wide` is for a screen that lies: a film that fills a television or a phone on its side. `tall` fills a phone that stands. `card` is small, for a
 * picture that moves in a message. A half field is about as high as wide, so each gives it the whole of its shorter side.
 */
export const filmForms: Readonly<Record<FilmFormName, FilmForm>> = {
  wide: {
    width: 1280,
    height: 720,
    field: { left: 0, top: 0, width: 780, height: 720 },
    words: { left: 780, top: 0, width: 500, height: 720 },
    letters: {
      title: 50,
      titleScheme: 36,
      men: 26,
      head: 30,
      scheme: 22,
      said: [32, 29, 26, 23, 20],
      past: 20,
      small: 16,
    },
    margin: 26,
    saidHeight: 282,
    menOnALine: 1,
    legend: true,
  },
  tall: {
    width: 720,
    height: 1280,
    field: { left: 0, top: 0, width: 720, height: 690 },
    words: { left: 0, top: 690, width: 720, height: 590 },
    letters: { title: 54, titleScheme: 40, men: 32, head: 36, scheme: 28, said: [38, 34, 30, 26], past: 26, small: 20 },
    margin: 28,
    saidHeight: 226,
    menOnALine: 2,
    legend: true,
  },
  card: {
    width: 640,
    height: 800,
    field: { left: 0, top: 0, width: 640, height: 600 },
    words: { left: 0, top: 600, width: 640, height: 200 },
    letters: { title: 32, titleScheme: 24, men: 18, head: 22, scheme: 18, said: [24, 21, 18, 16], past: 15, small: 14 },
    margin: 14,
    saidHeight: 114,
    menOnALine: 6,
    legend: false,
  },
};
