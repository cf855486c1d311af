import type { BagMovement } from '#api/bags.ts';

/** Acts that belong to one bag; what may have moved many (a list, a kit, a delivery) is taken back where all of it is in sight. */
const OF_ONE_BAG: ReadonlySet<string> = new Set(['picked', 'returned', 'counted']);

/** Newest first, as a person looks back. */
export const newestFirst = (movements: readonly BagMovement[]): BagMovement[] => movements.toSorted((a, b) => b.seq - a.seq);

const open = (move: BagMovement): boolean => move.undoes === null && move.undoneBy === null;

/** The newest movement that was neither undone nor is an undo, if it may be taken back from here. */
export function newestUndoable(movements: readonly BagMovement[]): BagMovement | null {
  const move = newestFirst(movements).find(open);
  return move && OF_ONE_BAG.has(move.kind) ? move : null;
}

/** The very last thing that happened to the bag, if it may be taken back: a second press of the key must not reach further back. */
export function latestUndoable(movements: readonly BagMovement[]): BagMovement | null {
  const last = newestFirst(movements)[0];
  return last && open(last) && OF_ONE_BAG.has(last.kind) ? last : null;
}

/** Number of the newest movement that the page shows; 0 where nothing was ever booked. */
export const seenSeq = (movements: readonly BagMovement[]): number => newestFirst(movements)[0]?.seq ?? 0;

/** When the bag ran out, or null while something is in it. */
export function emptySince(bag: { readonly onHand: number; readonly movements: readonly BagMovement[] }): string | null {
  if (bag.onHand > 0) return null;
  const newest = newestFirst(bag.movements);
  const before = newest.findIndex((move) => move.onHand > 0);
  return newest[before < 0 ? newest.length - 1 : before - 1]?.happenedAt ?? null;
}

/** What it was for, who did it and what they noted, in one cell. */
export const forWhom = ({ for: purpose, who, note }: BagMovement): string =>
  [purpose, note, who].filter((word) => word !== null && word !== '').join(', ');
