/** Rows of one INSERT or names of one IN: well below the parameters that either engine takes. */
const CHUNK = 400;

/** `[1 … 1000]` in pieces of at most 400; nothing for nothing. */
export function chunks<T>(items: readonly T[], size: number = CHUNK): T[][] {
  const pieces: T[][] = [];
  for (let at = 0; at < items.length; at += size) pieces.push(items.slice(at, at + size));
  return pieces;
}

/** Values grouped by a key, in the order in which they came. */
export function grouped<K, V>(items: readonly V[], key: (item: V) => K): Map<K, V[]> {
  const groups = new Map<K, V[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group) group.push(item);
    else groups.set(key(item), [item]);
  }
  return groups;
}
