import { findAsked } from '#core/find/find.ts';
import type { FindIndex } from '#core/find/find-index.ts';
import { glossQuery } from '#core/find/gloss-query.ts';
import { groupOf, type FoundGroup } from '#core/find/group.ts';
import { readQuery } from '#core/find/read-query.ts';
import type { Bag } from '#core/stock/stock.ts';
import { sayAsked } from '#say/en/asked.ts';
import { sayFound } from '#say/en/find.ts';
import type { GlossWords } from '#say/en/gloss.ts';

export interface FoundBag {
  readonly bag: Bag;
  /** answers all that was typed; else it is something near */
  readonly full: boolean;
  readonly group: FoundGroup;
  /** the reasons in words */
  readonly why: readonly string[];
}

export interface FoundBags {
  /** what was typed over what it was looked for as */
  readonly read: readonly GlossWords[];
  /** the best first */
  readonly found: readonly FoundBag[];
}

/** Bags that answer what was typed, with the reasons in words. */
export function findBags(index: FindIndex, words: string, limit: number): FoundBags {
  const query = readQuery(words);
  const found = findAsked(index, query, limit);
  const bags = found.map(({ bag }) => bag);
  return {
    read: sayAsked(glossQuery(query, bags)),
    found: found.map(({ bag, full, why }) => ({ bag, full, group: groupOf(bag, full, why), why: why.map(sayFound) })),
  };
}
