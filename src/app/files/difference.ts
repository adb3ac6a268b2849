/** What can be said of one part of a playbook: by what it is about, the lines that say it. */
export type Facts = ReadonlyMap<string, readonly string[]>;

/** One thing of which two copies of a part say different things. */
export interface Difference {
  /** What it is about: "Step “behind”". */
  readonly what: string;
  /** What only the first says of it; nothing when it says less. */
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** Where two copies of a part differ, in the order in which they tell it. A part that is not there says nothing. */
export function differencesOf(before: Facts, after: Facts): readonly Difference[] {
  const found: Difference[] = [];
  for (const what of new Set([...before.keys(), ...after.keys()])) {
    const [first, second] = [before.get(what) ?? [], after.get(what) ?? []];
    const [only, other] = [missingIn(first, second), missingIn(second, first)];
    if (only.length + other.length > 0) found.push({ what, before: only, after: other });
    // The same lines in another order: all of them are the news.
    else if (first.some((line, index) => line !== second[index])) found.push({ what, before: first, after: second });
  }
  return found;
}

/** Facts of a list of pairs: pairs without lines are left out, and pairs about the same follow each other. */
export function factsOf(pairs: readonly (readonly [what: string, lines: readonly string[]])[]): Facts {
  const facts = new Map<string, readonly string[]>();
  for (const [what, lines] of pairs) if (lines.length > 0) facts.set(what, [...(facts.get(what) ?? []), ...lines]);
  return facts;
}

/** Zero or one line: nothing for what is not there. */
export function line(text: string | undefined): readonly string[] {
  return text === undefined || text === '' ? [] : [text];
}

/** Lines that the other list has not, or not as often. */
function missingIn(lines: readonly string[], other: readonly string[]): readonly string[] {
  const left = [...other];
  return lines.filter((each) => {
    const at = left.indexOf(each);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}
