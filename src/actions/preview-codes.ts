import { codeBy, codeClashes, type CodeClash, type CodePattern } from '#core/part/part-code-pattern.ts';
import type { Bag } from '#core/stock/stock.ts';

/** A bag with the code on its label and the one that a pattern would give. */
export interface CodeOfBag {
  readonly bag: number;
  readonly now: string;
  readonly then: string;
}

export interface CodePreview {
  readonly bags: readonly CodeOfBag[];
  readonly differ: number;
  readonly clashes: readonly CodeClash<Bag>[];
}

/** What a pattern would make of the labels of the whole stock; nothing is written. */
export function previewCodes(pattern: CodePattern, stock: readonly Bag[]): CodePreview {
  const bags = stock.map((bag) => ({ bag: bag.number, now: bag.code, then: codeBy(pattern, bag.part) }));
  return { bags, differ: bags.filter(({ now, then }) => now !== then).length, clashes: codeClashes(pattern, stock) };
}
