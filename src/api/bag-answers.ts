import type { Bag } from '#core/stock/stock.ts';
import type { BagView, FoundBag } from './bags.ts';

/** A bag as it crosses the wire. */
export function bagView(bag: Bag): BagView {
  const { number, box, place, code, part, holder, unit, state, onHand, sure, reserved, oldest, toCount } = bag;
  const free = sure - reserved;
  return {
    bag: number,
    box,
    place,
    code,
    text: part.text,
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

/** A bag that a search found, with why. */
export function foundBag({
  bag,
  full,
  why,
}: {
  readonly bag: Bag;
  readonly full: boolean;
  readonly why: readonly string[];
}): FoundBag {
  const { number, box, code, part, onHand, sure, reserved } = bag;
  return { bag: number, box, code, text: part.text, onHand, free: sure - reserved, full, why: [...why] };
}
