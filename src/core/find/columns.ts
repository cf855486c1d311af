import { KINDS } from '#core/part/part.ts';
import type { Bag } from '#core/stock/stock.ts';

/** What ranking and matching look at of every bag, by slot, packed so that going over many bags stays quick; and scratch paper. */
export interface Columns {
  readonly number: Float64Array;
  readonly kind: Uint8Array;
  /** place in `packages.names`; 0 where none is stated */
  readonly pack: Uint16Array;
  readonly packages: Packages;
  /** 0 no bag, 1 exhausted, 2 astray, 3 sound */
  readonly standing: Uint8Array;
  readonly score: Uint16Array;
  readonly essential: Uint8Array;
  readonly answered: Uint8Array;
  readonly seen: Uint8Array;
  readonly touched: Uint32Array;
}

export interface Packages {
  readonly names: string[];
  readonly ids: Map<string, number>;
}

export function newColumns(size: number, packages: Packages = { names: [''], ids: new Map() }): Columns {
  return {
    number: new Float64Array(size),
    kind: new Uint8Array(size),
    pack: new Uint16Array(size),
    packages,
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
  const longer = newColumns(Math.max(slots, Math.ceil(columns.number.length * 1.5)), columns.packages);
  longer.number.set(columns.number);
  longer.kind.set(columns.kind);
  longer.pack.set(columns.pack);
  longer.standing.set(columns.standing);
  return longer;
}

export function note(columns: Columns, slot: number, bag: Bag | null): void {
  columns.number[slot] = bag?.number ?? 0;
  columns.kind[slot] = bag ? KINDS.indexOf(bag.part.kind) : 0;
  columns.pack[slot] = packageId(columns.packages, bag?.part.facts.package?.value);
  columns.standing[slot] = bag ? standing(bag) : 0;
}

function packageId({ names, ids }: Packages, name: string | undefined): number {
  if (name === undefined) return 0;
  const known = ids.get(name);
  if (known !== undefined) return known;
  const id = names.push(name) - 1;
  ids.set(name, id);
  return id;
}

function standing(bag: Bag): number {
  if (bag.onHand === 0) return 1;
  return bag.state === 'astray' ? 2 : 3;
}
