import type { Play, Point } from '../../engine/index.ts';
import { pathLength } from '../arrow.ts';
import { actionPath, openingPicture, playSteps } from '../play-steps.ts';
import { pxPerYard, svgStyles } from '../svg-styles.ts';

/** A smaller ground than this would have men at the crease stand on each other. */
const smallestGround = 0.62;
/** Room beside the outermost man, yd, as a view has it. */
const besideHim = 1.8;
/** A carry must be this long to be drawn with a wave that is seen, yd: its man's radius, a small wave, its straight end and its head. */
const shortestZigzag = 2.8;

/**
 * How much of a play's ground a picture `width` points wide should show it on (`scaledPlay`), so that its letters are `letters` points large as far
 * as there is room: 0.62 to 1.
 */
export function groundShare(play: Play, width: number, letters: number): number {
  // The view is twice as wide as the outermost man stands from the middle; the less ground, the larger its letters.
  const outermost = Math.max(1, ...placesOf(play).map(({ x }) => Math.abs(x)));
  const lettersPx = svgStyles.sun.attackerText.fontPx!;
  const halfView = (lettersPx * width) / (2 * letters * pxPerYard);
  const least = Math.max(smallestGround, ...carriesOf(play).map((length) => shortestZigzag / length));
  return Math.min(1, Math.max(least, (halfView - besideHim) / outermost));
}

/** Where the men of a play stand before and after each of its steps. */
export function placesOf(play: Play): readonly Point[] {
  const pictures = [openingPicture(play), ...playSteps(play).map(({ after }) => after)];
  return pictures.flatMap(({ places }) => Object.values(places));
}

/** How long each carry is, yd, that can be drawn as one at all. */
function carriesOf(play: Play): readonly number[] {
  return playSteps(play).flatMap(({ beat, before }) =>
    beat.actions
      .filter(({ kind }) => kind === 'carry')
      .map((action) => pathLength(actionPath(action, before) ?? []))
      .filter((length) => length >= shortestZigzag),
  );
}
