/** How deep a bag stands in its box, among the bags that stand there: front first. */
export interface Depth {
  /** from 1 */
  readonly rank: number;
  readonly of: number;
  /** the live neighbour before it, or null at the front */
  readonly after: number | null;
}

interface Standing {
  readonly bag: number;
  readonly standing: 'holds' | 'exhausted' | 'astray';
}

/** Rank of a bag among what stands in the box: an exhausted or astray bag leaves no slip to count, but for the bag itself. */
export function depthOf(bags: readonly Standing[], bag: number): Depth | null {
  const there = bags.filter((one) => one.standing === 'holds' || one.bag === bag);
  const at = there.findIndex((one) => one.bag === bag);
  return at < 0 ? null : { rank: at + 1, of: there.length, after: there[at - 1]?.bag ?? null };
}
