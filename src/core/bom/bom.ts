import type { Doubt } from '#core/part/doubt.ts';
import type { Part } from '#core/part/part.ts';
import type { BagState, BagUnit, Holder } from '#core/stock/stock.ts';

/** A data row of a BOM or a stock list, as read. */
export interface ReadRow {
  /** 1-based physical line where the record starts */
  readonly row: number;
  readonly refs: readonly string[];
  /** as printed, exact; null where no plain count is printed */
  readonly quantity: number | null;
  readonly fitted: boolean;
  readonly part: Part;
  /** stock lists: bag number or place as printed, when there is one */
  readonly location: string | null;
  /** stock lists: what names the bag, in a column of bag numbers or of places that may be numbers; left out where nobody looked */
  readonly bag?: string | null;
  /** stock lists: the box as printed, where it has a column of its own */
  readonly box?: string | null;
  /** stock lists: drawer, shelf or place in the box as printed, where it has a column of its own */
  readonly place?: string | null;
  /** what a person remarked beside the part */
  readonly remark?: string;
  /** other parts that the line itself allows, in its order */
  readonly alternates?: readonly Part[];
  /** how the bag itself was kept: only in lists that Bagatelle wrote */
  readonly kept?: Kept;
  readonly supplier: string | null;
  /** about so many, where a person said that an estimate is right */
  readonly estimate?: number;
  /** pieces that a board takes, where a person said so: however many refs there are */
  readonly perBoard?: number;
  readonly doubts: readonly Doubt[];
}

/** What our own export says of a bag beside its part and place. */
export interface Kept {
  readonly sure: number;
  readonly state: BagState;
  readonly holder: Holder;
  readonly unit: BagUnit;
  readonly toCount: boolean;
}

/** What a person chose for a demand on this board; `accept` also accepts the checks of it. */
export interface Choice {
  /** key of the line's demand: the same demand in the next revision keeps its choice */
  readonly demand: string;
  readonly bag: number;
  readonly accept: boolean;
  /** why, where the bag does not serve by the rules */
  readonly reason?: string;
}
