import { palettes } from '../palettes.ts';
import { filmInks } from './film-marks.ts';

/** Colours that lie next to each other in a film, and so are mixed along its edges: what is drawn, and the grounds that it is drawn on. #rrggbb. */
export interface FilmColours {
  readonly drawn: readonly string[];
  readonly grounds: readonly string[];
}

/** All the colours of a film, for a file that can hold but a few. */
export function filmColours(): FilmColours {
  const { ink, quiet, page, offense, defense, ball, grass, boxGrass, creaseGrass, paint, open } = palettes.paper;
  const { panel, tint, rule, chosen, onChosen, onChosenQuiet } = filmInks;
  return {
    drawn: [ink, quiet, filmInks.quiet, offense, defense, ball, paint, open, chosen, onChosen, onChosenQuiet, rule],
    grounds: [page, grass, boxGrass, creaseGrass, panel, tint, chosen],
  };
}
