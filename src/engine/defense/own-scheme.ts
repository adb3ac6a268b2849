import type { Point } from '../geometry/point.ts';
import { compileOwnScheme } from './own-scheme/compile.ts';
import type { OwnSchemeData, OwnSchemeResult } from './own-scheme/data.ts';

export type { OwnDuty, OwnSchemeData, OwnSchemeResult, PlaceName } from './own-scheme/data.ts';
export type { OwnSchemeProblem } from './own-scheme/problem.ts';

/**
 * Turn a coach's grid into a scheme for a set of spots (pass none to check it by trade names alone).
 *
 * Never throws: whatever cannot be read becomes a problem with its path, and the defender in question stays at home.
 * At play time the row is that of the place nearest the ball, and "TR" is whoever is nearest the place TR; a locked man keeps his man.
 */
export function createOwnScheme(
  data: OwnSchemeData,
  spots: readonly { readonly id: string; readonly at: Point }[],
): OwnSchemeResult {
  return compileOwnScheme(data, spots);
}
