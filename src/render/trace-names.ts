/** What the people of a trace are called, in the trace's order. */
export interface TraceNames {
  readonly play: string;
  readonly scheme: string;
  /** Six spots. */
  readonly offense: readonly string[];
  /** Defenders, the released man last when there is one. */
  readonly defense: readonly string[];
}

export function attackerName(names: TraceNames, index: number): string {
  return names.offense[index] ?? 'nobody';
}

/** -1 is the keeper, as in `TraceEvent.by`. */
export function defenderName(names: TraceNames, index: number): string {
  if (index === -1) return 'the keeper';
  return names.defense[index] ?? 'the released man';
}
