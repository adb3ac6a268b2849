/** Whether two JSON values say the same: the order of an object's members does not count, and one that is undefined is not there. */
export function sameValue(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  if (Array.isArray(one) && Array.isArray(other)) {
    return one.length === other.length && one.every((item, index) => sameValue(item, other[index]));
  }
  const [left, right] = [one as Record<string, unknown>, other as Record<string, unknown>];
  return [...new Set([...Object.keys(left), ...Object.keys(right)])].every((key) =>
    sameValue(Object.hasOwn(left, key) ? left[key] : undefined, Object.hasOwn(right, key) ? right[key] : undefined),
  );
}
