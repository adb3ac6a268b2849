/** One value of a rule code, with where it stands and whether it may be relied on. */
export interface Rule<T> {
  readonly value: T;
  readonly source: string;
  /**
   * False where the rule was recalled, was read only in part, or where sources disagree: such a value is a setting, and
   * whoever shows it says "confirm in your rulebook".
   */
  readonly confirmed: boolean;
  /** Other values that a source gives, or that are likely, when it is not confirmed. */
  readonly others?: readonly T[];
}

/** A value that a page of the body itself, or one that reports its rule, gives. */
export function known<T>(value: T, source: string): Rule<T> {
  return { value, source, confirmed: true };
}

/** A value to confirm in the rulebook, with what else it might be. */
export function toConfirm<T>(value: T, source: string, others: readonly T[] = []): Rule<T> {
  return { value, source, confirmed: false, others };
}
