import {
  codeBy,
  codeClashes,
  DEFAULT_PATTERN,
  parseCodePattern,
  type CodeClash,
  type PatternFault,
} from '#core/part/part-code-pattern.ts';
import type { Bag } from '#core/stock/stock.ts';

/** A bag with the code on its label and the one that a pattern would give. */
export interface CodeOfBag {
  readonly bag: number;
  readonly now: string;
  readonly wouldBe: string;
}

export interface CodePreview {
  readonly bags: readonly CodeOfBag[];
  readonly differ: number;
  readonly clashes: readonly CodeClash<Bag>[];
}

export type CodePreviewed =
  | { readonly ok: true; readonly preview: CodePreview }
  | { readonly ok: false; readonly fault: PatternFault };

/** What a pattern, or today's where none is given, would make of the labels of the whole stock; nothing is written. */
export function previewCodes(written: string | undefined, stock: readonly Bag[]): CodePreviewed {
  const read = parseCodePattern(written ?? DEFAULT_PATTERN);
  if (!read.ok) return read;
  const bags = stock.map((bag) => ({ bag: bag.number, now: bag.code, wouldBe: codeBy(read.pattern, bag.part) }));
  const { length: differ } = bags.filter(({ now, wouldBe }) => now !== wouldBe);
  return { ok: true, preview: { bags, differ, clashes: codeClashes(read.pattern, stock) } };
}
