import type { Scheme } from '../scheme.ts';
import type { OwnSchemeProblem } from './problem.ts';

/** A place by the trade's name (TR, WL, C ...), by the coach's own spot id, or by where it is (topRight, wingLeft, behind, crease ...). */
export type PlaceName = string;

/** One defender's duty in words, as a coach writes it. */
export type OwnDuty =
  | { readonly duty: 'ball' }
  | { readonly duty: 'man' | 'lock' | 'front'; readonly who: PlaceName }
  | { readonly duty: 'split'; readonly who: readonly [PlaceName, PlaceName] }
  | { readonly duty: 'lane'; readonly who: PlaceName; readonly at?: readonly [number, number] }
  | { readonly duty: 'pipe'; readonly who: PlaceName; readonly at?: readonly [number, number] }
  | { readonly duty: 'place'; readonly at: readonly [number, number] };

/** A man-down scheme that a coach writes as a grid: a row per place of the ball, a duty per defender. */
export interface OwnSchemeData {
  readonly id: string;
  readonly name: string;
  readonly defenders: readonly {
    readonly name: string;
    /** Home place, yards, x to the offense's right. */
    readonly home: readonly [number, number];
    readonly stick: 'short' | 'pole';
  }[];
  /** How far out the ball is met, yards from the middle of the goal. */
  readonly extends?: number;
  /** Duties by defender name, for the ball at each place. A place without a row is played by the nearest row. */
  readonly rows: Readonly<Record<PlaceName, Readonly<Record<string, OwnDuty>>>>;
}

export interface OwnSchemeResult {
  /** Plays what could be read; undefined when there is no defender or no row at all. */
  readonly scheme: Scheme | undefined;
  readonly problems: readonly OwnSchemeProblem[];
}
