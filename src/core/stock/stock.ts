import type { Part } from '#core/part/part.ts';

/** What a bag counts in; whole numbers of it, always. */
export type BagUnit = 'piece' | 'mm' | 'mg';
export type Holder = 'zip-bag' | 'reel' | 'tube' | 'tin' | 'drawer' | 'spool' | 'cell';
/** Why a bag may be less than it says: `salvaged` and `mixed` are at most `check`; `astray` is left out of plans. */
export type BagState = 'sound' | 'astray' | 'salvaged' | 'mixed' | 'expired';

/** A bag as plans and searches see it: one immutable picture at a change number. */
export interface Bag {
  readonly id: string;
  readonly number: number;
  readonly partId: string;
  readonly code: string;
  readonly part: Part;
  readonly holder: Holder;
  readonly unit: BagUnit;
  readonly box: string | null;
  /** place in the box, case cell, or words */
  readonly place: string | null;
  readonly state: BagState;
  readonly onHand: number;
  /** 0 ≤ sure ≤ onHand */
  readonly sure: number;
  readonly reserved: number;
  /** plain date (YYYY-MM-DD) of the oldest lot in it, or null */
  readonly oldest: string | null;
  readonly toCount: boolean;
  /** who delivered what is in it; left out where nobody asks */
  readonly suppliers?: readonly string[];
}

/** What plans may promise; negative after a count shows a broken promise. */
export function free(bag: Bag): number {
  return bag.sure - bag.reserved;
}

/** A box on its shelf. `lifts` is how many boxes stand on it. */
export interface Box {
  readonly name: string;
  readonly places: number;
  readonly lifts: number;
  /** order in which a person walks past the boxes */
  readonly order: number;
}

/** The whole stock at a change number. */
export interface Stock {
  readonly change: number;
  readonly bags: readonly Bag[];
  readonly boxes: readonly Box[];
}
