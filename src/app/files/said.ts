/** What was just done, and the step of undo that takes it back when there is one. */
export interface Said {
  readonly text: string;
  readonly step?: string;
}
