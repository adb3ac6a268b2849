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

/**
 * A defender's name on the other side of the field: "tr" is "tl" and "ll" is "lr". Names without a side stay.
 * Needed where a whole chance was mirrored, because there the man called tr stands on the left.
 */
export function mirrorDefender(name: string): string {
  if (/^[a-z]+r$/.test(name)) return `${name.slice(0, -1)}l`;
  if (/^[a-z]+l$/.test(name)) return `${name.slice(0, -1)}r`;
  return name;
}
