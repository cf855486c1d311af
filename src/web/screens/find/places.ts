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

export type Places = (bag: number, box: string | null) => StandsIn | undefined;

/** Where the live bags of the lab stand; a box is walked when one of its bags is first asked for. */
export function placesOf(boxes: BoxesView | undefined): Places {
  const walked = new Map<string, ReadonlyMap<number, StandsIn>>();
  return (bag, name) => {
    const box = boxes?.boxes.find((one) => one.name === name);
    if (!box) return undefined;
    const places = walked.get(box.name) ?? placesIn(box);
    walked.set(box.name, places);
    return places.get(bag);
  };
}

function placesIn({ name, bags }: BoxesView['boxes'][number]): ReadonlyMap<number, StandsIn> {
  const there = bags.filter(({ standing }) => standing === 'holds');
  return new Map(
    there.map(({ bag }, at) => [bag, { box: name, rank: at + 1, of: there.length, after: there[at - 1]?.bag ?? null }]),
  );
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
