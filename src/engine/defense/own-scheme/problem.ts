/** Something in a coach's grid that cannot be played as written. */
export interface OwnSchemeProblem {
  readonly code:
    | 'no-defenders'
    | 'no-rows'
    | 'defender-count'
    | 'repeated-defender'
    | 'unknown-place'
    | 'unknown-defender'
    | 'missing-duty'
    | 'unknown-duty'
    | 'invalid-point'
    | 'invalid-extends'
    | 'nobody-on-ball';
  /** Where it stands, as in `rows.TR.ll.who`. */
  readonly path: string;
  /** A plain sentence. */
  readonly message: string;
}
