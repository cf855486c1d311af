/** What the page needs of one found bag: an answer of `/api/find`. */
export interface FoundBag {
  readonly bag: number;
  readonly box: string | null;
  readonly code: string;
  readonly text: string;
  readonly onHand: number;
  readonly free: number;
  readonly why: readonly string[];
}

export interface FoundGroup {
  readonly name: string;
  readonly bags: readonly FoundBag[];
}

/** The page's one sentence: how many bags that hold something answer. */
export function answerOf(found: readonly FoundBag[]): string {
  const holding = found.filter((bag) => bag.onHand > 0);
  if (holding.length === 0) return found.length ? 'All of these are exhausted.' : 'Nothing here answers to that.';
  return holding.length === 1 ? 'One bag answers.' : `${holding.length} bags answer.`;
}

/** Bags that hold something in their order, then the exhausted ones; a group without bags is left out. */
export function groupsOf(found: readonly FoundBag[]): FoundGroup[] {
  const groups = [
    { name: 'On hand', bags: found.filter((bag) => bag.onHand > 0) },
    { name: 'Exhausted', bags: found.filter((bag) => bag.onHand === 0) },
  ];
  return groups.filter((group) => group.bags.length > 0);
}

const RAIL_STEPS = 60;

/** Where the mark stands on the rail: (number − 1) modulo its steps, 0 front to 1 back. */
export function markOf(number: number): number {
  return ((number - 1) % RAIL_STEPS) / (RAIL_STEPS - 1);
}
