import type { Bag } from '#core/stock/stock.ts';

/** The `limit` best of many by rank, then by bag number, best first, without sorting the many. */
export function best<T extends { readonly rank: number; readonly bag: Bag }>(limit: number, many: Iterable<T>): T[] {
  const kept: T[] = [];
  if (limit < 1) return kept;
  for (const one of many) {
    const last = kept[limit - 1];
    if (last && !before(one, last)) continue;
    kept.splice(placeOf(kept, one), 0, one);
    if (kept.length > limit) kept.pop();
  }
  return kept;
}

function before<T extends { readonly rank: number; readonly bag: Bag }>(a: T, b: T): boolean {
  return a.rank === b.rank ? a.bag.number < b.bag.number : a.rank > b.rank;
}

function placeOf<T extends { readonly rank: number; readonly bag: Bag }>(kept: readonly T[], one: T): number {
  let low = 0;
  let high = kept.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const at = kept[middle];
    if (at && before(at, one)) low = middle + 1;
    else high = middle;
  }
  return low;
}
