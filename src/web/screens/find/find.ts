/** What the page needs of one found bag; the shape of `bagatelle find --json` with its depth in the box. */
export interface FoundBag {
  readonly bag: number;
  readonly box: string | null;
  readonly code: string;
  readonly text: string;
  readonly onHand: number;
  readonly free: number;
  readonly why: string;
}

export interface LabState {
  readonly bags: number;
  readonly boxes: number;
}

/** The page's one sentence: how many bags hold what was asked, and how many pieces. */
export function answerOf(found: readonly FoundBag[]): string {
  const holding = found.filter((bag) => bag.onHand > 0);
  if (holding.length === 0) return found.length ? 'All of these are exhausted.' : 'Nothing here answers to that.';
  return holding.length === 1 ? 'One bag answers.' : `${holding.length} bags answer.`;
}

const RAIL_STEPS = 60;

/** Where the mark stands on the rail: (number − 1) modulo its steps, 0 front to 1 back. */
export function markOf(number: number): number {
  return ((number - 1) % RAIL_STEPS) / (RAIL_STEPS - 1);
}
