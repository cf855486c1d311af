import type { Doubt } from '#core/part/doubt.ts';
import type { Part } from '#core/part/part.ts';

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
  /** stock lists: the box as printed, where it has a column of its own */
  readonly box?: string | null;
  readonly supplier: string | null;
  readonly doubts: readonly Doubt[];
}

/** What a person chose for a demand on this board; `accept` also accepts the checks of it. */
export interface Choice {
  /** key of the line's demand: the same demand in the next revision keeps its choice */
  readonly demand: string;
  readonly bag: number;
  readonly accept: boolean;
}
