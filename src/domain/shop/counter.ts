/** Signed sums by key. A key whose sum is 0 is not held, so equal sums are equal maps. */
export type Counter<Key extends string = string> = Map<Key, number>;

export function addTo<Key extends string>(
  counter: Counter<Key>,
  { key, by }: { key: Key; by: number },
): void {
  if (by === 0) return;
  const sum = (counter.get(key) ?? 0) + by;
  if (sum === 0) counter.delete(key);
  else counter.set(key, sum);
}

export function countOf<Key extends string>(counter: Counter<Key> | undefined, key: Key): number {
  return counter?.get(key) ?? 0;
}
