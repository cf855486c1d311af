import type { FoundBag } from '#api/bags.ts';
import { FIND_PAGE, sayFoundCount } from '#say/en/find-page.ts';

export interface FoundGroup {
  readonly name: string;
  readonly bags: readonly FoundBag[];
}

interface Split {
  readonly full: readonly FoundBag[];
  readonly near: readonly FoundBag[];
  readonly exhausted: readonly FoundBag[];
}

function split(found: readonly FoundBag[]): Split {
  const holding = found.filter((bag) => bag.onHand > 0);
  return {
    full: holding.filter((bag) => bag.full),
    near: holding.filter((bag) => !bag.full),
    exhausted: found.filter((bag) => bag.onHand === 0),
  };
}

/** The page's one sentence. */
export function answerOf(found: readonly FoundBag[]): string {
  const { full, near, exhausted } = split(found);
  return sayFoundCount(full.length, near.length, exhausted.length);
}

/** Bags that answer all of it, bags near it, exhausted ones; a group without bags is left out. */
export function groupsOf(found: readonly FoundBag[]): FoundGroup[] {
  const { full, near, exhausted } = split(found);
  const groups = [
    { name: FIND_PAGE.groups.onHand, bags: full },
    { name: FIND_PAGE.groups.near, bags: near },
    { name: FIND_PAGE.groups.exhausted, bags: exhausted },
  ];
  return groups.filter((group) => group.bags.length > 0);
}
