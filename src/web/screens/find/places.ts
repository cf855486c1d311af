import type { BoxesView } from '#api/bags.ts';
import type { Slot } from '../../ui/slots.tsx';

/** Where a bag stands: its rank among what is there, front first. */
export interface StandsIn {
  readonly box: string;
  readonly rank: number;
  readonly of: number;
  /** the live neighbour before it, or null at the front */
  readonly after: number | null;
}

/** Where each live bag of the lab stands, in one walk over the boxes. */
export function placesOf(boxes: BoxesView | undefined): ReadonlyMap<number, StandsIn> {
  const places = new Map<number, StandsIn>();
  for (const { name, bags } of boxes?.boxes ?? []) {
    const there = bags.filter(({ standing }) => standing === 'holds');
    for (const [at, { bag }] of there.entries())
      places.set(bag, { box: name, rank: at + 1, of: there.length, after: there[at - 1]?.bag ?? null });
  }
  return places;
}

/** The look down into a box, front first, with one bag in it drawn tall; places that are left stand at the back. */
export function slotsOf(
  { places, bags }: { readonly places: number; readonly bags: BoxesView['boxes'][number]['bags'] },
  hit: number | null = null,
): Slot[] {
  const slots = bags.map(({ bag, standing }): Slot => {
    if (bag === hit) return standing === 'exhausted' ? 'gone' : 'hit';
    return standing === 'holds' ? 'live' : 'empty';
  });
  while (slots.length < places) slots.push('free');
  return slots;
}
