/** A place on the field: yards, origin at the middle of the goal line, +x the offense's right looking in, +y toward midfield. */
export interface Point {
  readonly x: number;
  readonly y: number;
}
