import { find } from '#core/find/find.ts';
import type { FindIndex } from '#core/find/find-index.ts';
import type { Bag } from '#core/stock/stock.ts';
import { sayFound } from '#say/en/find.ts';

export interface FoundBag {
  readonly bag: Bag;
  /** answers all that was typed; else it is something near */
  readonly full: boolean;
  /** the reasons in words */
  readonly why: readonly string[];
}

/** Bags that answer what was typed, the best first, with the reasons in words. */
export function findBags(index: FindIndex, words: string, limit: number): FoundBag[] {
  return find(index, words, { limit }).map(({ bag, full, why }) => ({ bag, full, why: why.map(sayFound) }));
}
