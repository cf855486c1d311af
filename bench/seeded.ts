/** Chance that can be repeated: the same seed gives the same numbers (mulberry32, public domain, by Tommy Ettinger). */
export interface Seeded {
  /** 0 ≤ x < 1 */
  next(): number;
  /** whole number from low to high, both included */
  whole(low: number, high: number): number;
  pick<T>(from: readonly T[]): T;
  /** the front of the list more often than its end */
  often<T>(from: readonly T[]): T;
}

export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const at = <T>(from: readonly T[], index: number): T => {
    const one = from[index];
    if (one === undefined) throw new Error('seeded.pick() wants a list that is not empty');
    return one;
  };
  return {
    next,
    whole: (low, high) => low + Math.floor(next() * (high - low + 1)),
    pick: (from) => at(from, Math.floor(next() * from.length)),
    often: (from) => at(from, Math.floor(next() ** 2 * from.length)),
  };
}
