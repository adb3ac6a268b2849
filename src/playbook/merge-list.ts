import { sameValue } from './same-value.ts';

/** What becomes of one item that is in at least one of the three lists. */
export interface MergedItem<T> {
  readonly key: string;
  /** Undefined where it was deleted, or never was. */
  readonly mine: T | undefined;
  readonly theirs: T | undefined;
  readonly outcome: 'same' | 'mine' | 'theirs' | 'conflict';
}

/** Three lists, and their items by a key that is one item's own in each of them. */
export interface ListMerge<T> {
  readonly items: readonly MergedItem<T>[];
  /** All keys, in the order in which the merged list holds those that stay. */
  readonly order: readonly string[];
}

/**
 * Merges two copies of a list item by item. What only one side changed, added or removed since `base` is taken from it; what both changed in
 * different ways is a conflict, and so is a removal against a change. Without a base, what only one side has is taken, and what differs is a conflict.
 *
 * The order is mine when I moved anything, otherwise theirs; what only the other side has follows what it follows there.
 */
export function mergeLists<T>(
  base: readonly T[] | undefined,
  mine: readonly T[],
  theirs: readonly T[],
  nameOf: (item: T) => string,
): ListMerge<T> {
  const [old, left, right] = [byKey(base ?? [], nameOf), byKey(mine, nameOf), byKey(theirs, nameOf)];
  const keys = new Set([...left.keys(), ...right.keys()]);
  const items = [...keys].map((key) => {
    const [one, other] = [left.get(key), right.get(key)];
    return { key, mine: one, theirs: other, outcome: mergeValues(base && { value: old.get(key) }, one, other) };
  });
  const moved = base === undefined || !keepsOrder([...old.keys()], [...left.keys()]);
  const [first, second] = moved ? [left, right] : [right, left];
  return { items, order: mergeOrders([...first.keys()], [...second.keys()]) };
}

/** Whose value is taken. `base` is undefined when there is none, and holds undefined for what it did not have. */
export function mergeValues(
  base: { readonly value: unknown } | undefined,
  mine: unknown,
  theirs: unknown,
): MergedItem<unknown>['outcome'] {
  if (sameValue(mine, theirs)) return 'same';
  if (base === undefined) return theirs === undefined ? 'mine' : mine === undefined ? 'theirs' : 'conflict';
  if (sameValue(base.value, theirs)) return 'mine';
  return sameValue(base.value, mine) ? 'theirs' : 'conflict';
}

/** Items by name; a name that comes again, as it may while somebody types, gets a count: "swing", "swing #2". */
function byKey<T>(items: readonly T[], nameOf: (item: T) => string): ReadonlyMap<string, T> {
  const found = new Map<string, T>();
  for (const item of items) {
    const name = nameOf(item);
    let key = name;
    for (let count = 2; found.has(key); count++) key = `${name} #${count}`;
    found.set(key, item);
  }
  return found;
}

/** Whether what both have in common stands in the same order in both. */
function keepsOrder(before: readonly string[], after: readonly string[]): boolean {
  const [had, has] = [new Set(before), new Set(after)];
  const stayed = before.filter((key) => has.has(key));
  return after.filter((key) => had.has(key)).every((key, index) => key === stayed[index]);
}

/** The first order, with what only the second has behind the one that it follows there. */
function mergeOrders(first: readonly string[], second: readonly string[]): readonly string[] {
  const order = [...first];
  const known = new Set(first);
  // With nothing in common, theirs come last.
  let at = second.some((key) => known.has(key)) ? 0 : order.length;
  for (const key of second) {
    if (known.has(key)) at = order.indexOf(key) + 1;
    else order.splice(at++, 0, key);
  }
  return order;
}
