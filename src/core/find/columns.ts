import { KINDS } from '#core/part/part.ts';
import type { Bag } from '#core/stock/stock.ts';

/** What ranking looks at of every bag, by slot, packed so that a search over all bags stays quick; and its scratch paper. */
export interface Columns {
  readonly number: Float64Array;
  readonly kind: Uint8Array;
  /** 0 no bag, 1 exhausted, 2 astray, 3 sound */
  readonly standing: Uint8Array;
  readonly score: Uint16Array;
  readonly essential: Uint8Array;
  readonly answered: Uint8Array;
  readonly seen: Uint8Array;
  readonly touched: Uint32Array;
}

export function newColumns(size: number): Columns {
  return {
    number: new Float64Array(size),
    kind: new Uint8Array(size),
    standing: new Uint8Array(size),
    score: new Uint16Array(size),
    essential: new Uint8Array(size),
    answered: new Uint8Array(size),
    seen: new Uint8Array(size),
    touched: new Uint32Array(size),
  };
}

/** Room for so many slots: the same columns, or longer ones with the same in them. */
export function grown(columns: Columns, slots: number): Columns {
  if (slots <= columns.number.length) return columns;
  const longer = newColumns(Math.max(slots, Math.ceil(columns.number.length * 1.5)));
  longer.number.set(columns.number);
  longer.kind.set(columns.kind);
  longer.standing.set(columns.standing);
  return longer;
}

export function note(columns: Columns, slot: number, bag: Bag | null): void {
  columns.number[slot] = bag?.number ?? 0;
  columns.kind[slot] = bag ? KINDS.indexOf(bag.part.kind) : 0;
  columns.standing[slot] = bag ? standing(bag) : 0;
}

function standing(bag: Bag): number {
  if (bag.onHand === 0) return 1;
  return bag.state === 'astray' ? 2 : 3;
}
