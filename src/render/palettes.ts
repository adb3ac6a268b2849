/**
 * The colours of one way of showing: on paper, on a dark screen, and on a screen in bright sun. What differs in meaning differs in shape,
 * fill, dash or weight too (`svg-styles.ts`): a palette changes how well a thing is seen, never what it says. Colours are #rrggbb.
 */
export interface Palette {
  /** Lines and words that matter most, and words that matter less. */
  readonly ink: string;
  readonly quiet: string;
  /** The page, the inside of an open circle, and the ring behind letters and crosses. */
  readonly page: string;
  readonly offense: string;
  readonly defense: string;
  readonly ball: string;
  /** The ball's own edge: darker than it on a light field, and on a dark one too, where the ball is light. */
  readonly ballEdge: string;
  readonly grass: string;
  readonly boxGrass: string;
  readonly creaseGrass: string;
  readonly paint: string;
  readonly net: string;
  /** What is open: the ring round a man and the shade on his row. */
  readonly open: string;
  readonly heat: string;
  /** Factor on the width of every line, > 0. */
  readonly weight: number;
  /** How much of a faint line is kept, 0 (nothing) to 1 (all of it). */
  readonly faint: {
    readonly halo: number;
    readonly reach: number;
    readonly trail: number;
    readonly passPast: number;
    readonly duty: number;
    /** Of one band; bands lie over each other. */
    readonly heat: number;
  };
}

export const paletteNames = ['paper', 'dark', 'sun'] as const;
export type PaletteName = (typeof paletteNames)[number];

/** `paper` is what print and documentation are drawn in; `dark` is calm; `sun` is near black on white with heavy lines. */
export const palettes: Readonly<Record<PaletteName, Palette>> = {
  paper: {
    ink: '#16263a',
    quiet: '#5d6f66',
    page: '#ffffff',
    offense: '#1c4a7d',
    defense: '#a33a16',
    ball: '#f2b705',
    ballEdge: '#16263a',
    grass: '#eaf1ea',
    boxGrass: '#e1ebe1',
    creaseGrass: '#d3e2d6',
    paint: '#9db5a3',
    net: '#ffffff',
    open: '#1b6b3a',
    heat: '#2c6a8f',
    weight: 1,
    faint: { halo: 0.75, reach: 0.1, trail: 0.55, passPast: 0.5, duty: 0.75, heat: 0.07 },
  },
  dark: {
    ink: '#eef2ec',
    quiet: '#b4c4ba',
    page: '#111a17',
    offense: '#9cc9f7',
    defense: '#ffb092',
    ball: '#ffd75e',
    ballEdge: '#111a17',
    grass: '#1d2925',
    boxGrass: '#22302b',
    creaseGrass: '#2b3c35',
    paint: '#7f9b8c',
    net: '#111a17',
    open: '#8fe3ab',
    heat: '#8cc9ea',
    weight: 1.1,
    faint: { halo: 0.8, reach: 0.14, trail: 0.7, passPast: 0.65, duty: 0.85, heat: 0.08 },
  },
  sun: {
    ink: '#000000',
    quiet: '#2b332f',
    page: '#ffffff',
    offense: '#00296b',
    defense: '#7a1a00',
    ball: '#ffc800',
    ballEdge: '#000000',
    grass: '#ffffff',
    boxGrass: '#fbfcfb',
    creaseGrass: '#eaf0eb',
    paint: '#5f6f66',
    net: '#ffffff',
    open: '#004d22',
    heat: '#00557f',
    weight: 1.35,
    faint: { halo: 0.9, reach: 0.16, trail: 0.8, passPast: 0.75, duty: 0.9, heat: 0.06 },
  },
};
