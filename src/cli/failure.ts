/** What a run of the command line ends with. */
export const exitCodes = {
  fine: 0,
  /** The file was read and is not valid, or the answer is no. */
  no: 1,
  /** The file cannot be read, or the command was used wrongly. */
  badUse: 2,
  /** Ended by Ctrl-C: 128 and the number of the signal, as shells do. */
  interrupted: 130,
} as const;
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/**
 * Ends a command with one plain sentence on standard error: what is wrong, where, and what to do.
 * Thrown by commands only, caught once in `run`; everything below them returns results.
 */
export class Failure extends Error {
  readonly exitCode: ExitCode;

  constructor(sentence: string, exitCode: ExitCode) {
    super(sentence);
    this.name = 'Failure';
    this.exitCode = exitCode;
  }
}

export function badUse(sentence: string): Failure {
  return new Failure(sentence, exitCodes.badUse);
}

/** "unknown play: wheell (expected wheel, slot)", with the likeliest name when there is one. */
export function unknownName(what: string, name: string, known: readonly string[], likely: string | undefined): Failure {
  const shown = JSON.stringify(name).slice(1, -1).slice(0, 40);
  const guess = likely === undefined ? '' : ` Did you mean ${likely}?`;
  const list = known.length === 0 ? 'there are none' : `expected ${known.join(', ')}`;
  return badUse(`unknown ${what}: ${shown} (${list}).${guess}`);
}
