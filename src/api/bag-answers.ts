import type { Bag } from '#core/stock/stock.ts';
import type { BagView, FoundBag, Said } from './bags.ts';

/** A bag as it crosses the wire, with what it is in words. */
export function bagView(bag: Bag, said: Said): BagView {
  const { number, box, place, code, part, holder, unit, state, onHand, sure, reserved, oldest, toCount } = bag;
  const free = sure - reserved;
  return {
    bag: number,
    box,
    place,
    code,
    text: part.text,
    said: { ...said },
    kind: part.kind,
    holder,
    unit,
    state,
    onHand,
    sure,
    reserved,
    free,
    oldest,
    toCount,
  };
}

interface Found {
  readonly bag: Bag;
  readonly full: boolean;
  readonly group: FoundBag['group'];
  readonly why: readonly string[];
}

/** A bag that a search found, with why. */
export function foundBag({ bag, full, group, why }: Found, said: Said): FoundBag {
  const { number, box, place, code, part, unit, state, onHand, sure, reserved } = bag;
  return {
    bag: number,
    box,
    place,
    code,
    text: part.text,
    said: { ...said },
    unit,
    state,
    onHand,
    free: sure - reserved,
    group,
    full,
    why: [...why],
  };
}
