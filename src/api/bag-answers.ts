import type { Bag } from '#core/stock/stock.ts';
import type { BagMovement, BagView, BagWithHistory, FoundBag, PartReading, Said } from './bags.ts';

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

/** A part as it is said; lists of words come from the readers as they are. */
interface InWords {
  readonly said: Said;
  readonly gloss: readonly PartReading['gloss'][number][];
  readonly doubts: readonly PartReading['doubts'][number][];
}

interface Page {
  readonly bag: Bag;
  readonly movements: readonly BagMovement[];
  readonly reservedFor: readonly BagWithHistory['reservedFor'][number][];
  readonly alike: readonly Bag[];
  readonly usedOn: readonly { readonly board: string; readonly refs: readonly string[] }[];
}

/** One bag with everything that is known of it. */
export function bagPage({ bag, movements, reservedFor, alike, usedOn }: Page, { said, gloss, doubts }: InWords): BagWithHistory {
  return {
    ...bagView(bag, said),
    gloss: [...gloss],
    doubts: [...doubts],
    movements: [...movements],
    reservedFor: [...reservedFor],
    alike: alike.map(({ number, box, onHand, sure, reserved }) => ({ bag: number, box, onHand, free: sure - reserved })),
    usedOn: usedOn.map(({ board, refs }) => ({ board, refs: [...refs] })),
  };
}

/** How a text is read as a part. */
export function partReading({ said, code, kind, gloss, doubts }: InWords & Pick<PartReading, 'code' | 'kind'>): PartReading {
  return { said: { ...said }, code, kind, gloss: [...gloss], doubts: [...doubts] };
}
