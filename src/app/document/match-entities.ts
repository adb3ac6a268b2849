/**
 * For each item of a list after an edit, the index of the item before it that it comes from, or -1 for a new one.
 *
 * The same object is the same item; then the same name is (id or number); then the same place in the list, which is
 * where an item stands whose name was just changed. Each old item is used once.
 */
export function matchEntities<T extends object>(
  before: readonly T[],
  after: readonly T[],
  nameOf: (item: T) => string,
): readonly number[] {
  const origins = after.map((item, index) => (before[index] === item ? index : none));
  const used = new Set(origins);
  const match = (index: number, origin: number | undefined): void => {
    if (origins[index] !== none || origin === undefined || used.has(origin)) return;
    origins[index] = origin;
    used.add(origin);
  };
  const places = queues(before, (item) => item);
  for (const [index, item] of after.entries()) match(index, nextFree(places.get(item), used));
  const names = queues(before, nameOf);
  for (const [index, item] of after.entries()) match(index, nextFree(names.get(nameOf(item)), used));
  for (const index of after.keys()) match(index, index < before.length ? index : undefined);
  return origins;
}

const none = -1;

function queues<T, K>(items: readonly T[], keyOf: (item: T) => K): ReadonlyMap<K, readonly number[]> {
  const byKey = new Map<K, number[]>();
  for (const [index, item] of items.entries()) {
    const queue = byKey.get(keyOf(item));
    if (queue === undefined) byKey.set(keyOf(item), [index]);
    else queue.push(index);
  }
  return byKey;
}

function nextFree(queue: readonly number[] | undefined, used: ReadonlySet<number>): number | undefined {
  return queue?.find((index) => !used.has(index));
}
