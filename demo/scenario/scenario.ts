import type { ReadField } from '#core/part/hints.ts';
import type { Kind } from '#core/part/part.ts';
import type { BagUnit, Holder } from '#core/stock/stock.ts';

/** What a bag is beside its number, words, pieces and price. */
export interface BagExtra {
  readonly holder?: Holder;
  readonly unit?: BagUnit;
  readonly state?: 'salvaged' | 'mixed';
  /** how many of the pieces are sure, where they were not counted */
  readonly sure?: number;
  readonly fields?: Readonly<Partial<Record<ReadField, string>>>;
  readonly note?: string;
}

/** Number, what is written on the bag, how many came in it at first, cents paid for all of them. */
export type BagRow = readonly [number: number, text: string, quantity: number, cents: number, extra?: BagExtra];

/** Bags of one kind that came in one delivery. */
export interface BagGroup {
  readonly kind: Kind;
  readonly delivery: string;
  readonly bags: readonly BagRow[];
}

/** More of what a bag holds already, in a later delivery. */
export type TopUp = readonly [delivery: string, bag: number, quantity: number, cents: number];

export interface Delivery {
  readonly key: string;
  readonly day: string;
  readonly who: string;
  readonly supplier: string | null;
  readonly note?: string;
}
