import type { Cast } from '../../worker/index.ts';

/** Whom a scheme shuts off, "shuts off 22 at WR"; empty when it shuts off nobody. */
export function shutOffWords(cast: Pick<Cast, 'play' | 'numbers' | 'shutOff'> | null): string {
  if (cast === null || cast.shutOff === null) return '';
  const number = cast.numbers[cast.play.spots.findIndex(({ id }) => id === cast.shutOff)];
  return number === undefined ? `shuts off ${cast.shutOff}` : `shuts off ${number} at ${cast.shutOff}`;
}
