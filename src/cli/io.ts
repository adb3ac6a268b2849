/** Everything that a command may touch outside itself, so that tests can run it in their own process. */
export interface Io {
  /** What to type in front of a command: "sliderule", "npm start --". */
  readonly program: string;
  /** Whole lines for the reader: standard output. */
  readonly out: (text: string) => void;
  /** What went wrong and how far long work has come: standard error. */
  readonly err: (text: string) => void;
  /** Standard error is a terminal, so that a moving progress line can be drawn on it. */
  readonly progressStream: NodeJS.WriteStream | null;
  /** Told when the person presses Ctrl-C. */
  readonly signal: AbortSignal;
  /** The bundled worker. */
  readonly worker: URL;
  /** The folder of the built workbench. */
  readonly app: URL;
  /** Opens an address in the system's browser, where there is one. */
  readonly showInBrowser: (address: string) => void;
}
