import type { Kind } from '#core/part/part.ts';
import type { Bag, Box, Stock } from './stock.ts';

/** How a bag stands in its box. */
export type Standing = 'holds' | 'exhausted' | 'astray';

export interface BagStanding {
  readonly bag: number;
  readonly standing: Standing;
}

/** A box as it stands: its bags front to back, the kinds in it, the most frequent first. */
export interface BoxStanding {
  readonly box: Box;
  readonly bags: readonly BagStanding[];
  readonly kinds: readonly Kind[];
}

export interface Shelf {
  readonly boxes: readonly BoxStanding[];
  readonly loose: readonly (BagStanding & { readonly place: string | null })[];
}

/** The boxes in their order with what stands in each, and the bags that are in none. */
export function shelfOf({ bags, boxes }: Stock): Shelf {
  const inBox = new Map<string, Bag[]>(boxes.map(({ name }) => [name, []]));
  const loose: Bag[] = [];
  for (const bag of bags) (inBox.get(bag.box ?? '') ?? loose).push(bag);
  const ordered = boxes.toSorted((a, b) => a.order - b.order || (a.name < b.name ? -1 : 1));
  return {
    boxes: ordered.map((box) => {
      const held = inBox.get(box.name) ?? [];
      return { box, bags: frontToBack(held).map(standingOf), kinds: kindsOf(held) };
    }),
    loose: frontToBack(loose).map((bag) => ({ ...standingOf(bag), place: bag.place })),
  };
}

/** Bags stand by their number; where each has a place that is a number, by that. */
function frontToBack(bags: readonly Bag[]): readonly Bag[] {
  const placed = bags.every(({ place }) => place !== null && /^\d{1,6}$/.test(place));
  return bags.toSorted((a, b) => (placed ? Number(a.place) - Number(b.place) : 0) || a.number - b.number);
}

function standingOf({ number, onHand, state }: Bag): BagStanding {
  return { bag: number, standing: state === 'astray' ? 'astray' : onHand === 0 ? 'exhausted' : 'holds' };
}

/** Kinds of what is in it; of a box with nothing left, of what was. */
function kindsOf(bags: readonly Bag[]): Kind[] {
  const held = bags.filter(({ onHand }) => onHand > 0);
  const counts = new Map<Kind, number>();
  for (const { part } of held.length ? held : bags) counts.set(part.kind, (counts.get(part.kind) ?? 0) + 1);
  return [...counts].toSorted((a, b) => b[1] - a[1]).map(([kind]) => kind);
}
