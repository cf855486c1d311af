import type { BoxesView, BoxPicture } from '#api/bags.ts';
import type { Slot } from '../../ui/slots.tsx';

/** A box in figures. */
export interface BoxSum {
  readonly box: BoxPicture;
  readonly filled: number;
  readonly exhausted: number;
  readonly astray: number;
  /** places that no bag ever took */
  readonly room: number;
  readonly first: number | undefined;
  readonly last: number | undefined;
}

export function sumOf(box: BoxPicture): BoxSum {
  const count = (wanted: string): number => box.bags.filter(({ standing }) => standing === wanted).length;
  return {
    box,
    filled: count('holds'),
    exhausted: count('exhausted'),
    astray: count('astray'),
    room: Math.max(0, box.places - box.bags.length),
    first: box.bags[0]?.bag,
    last: box.bags.at(-1)?.bag,
  };
}

/** Whether a bag of the box is exhausted; its place is still its own. */
export const isExhausted = ({ box }: BoxSum, bag: number): boolean =>
  box.bags.some((one) => one.bag === bag && one.standing === 'exhausted');

/** How the boxes stand: in a stack as soon as one of them costs lifts. */
export function standingOf({ boxes }: BoxesView): 'beside' | 'stacked' {
  return boxes.some(({ lifts }) => lifts > 0) ? 'stacked' : 'beside';
}

/** The names with one of them a place nearer to the top (−1) or the bottom (1); as they are where it can't move. */
export function moved(names: readonly string[], name: string, by: -1 | 1): readonly string[] {
  const at = names.indexOf(name);
  const other = names[at + by];
  if (at < 0 || other === undefined) return names;
  return names.map((one, place) => (place === at ? other : place === at + by ? name : one));
}

/** The look down into a box: a place that no bag took yet is a stub at the back. */
export function boxSlots({ box, room }: BoxSum): Slot[] {
  return [
    ...box.bags.map(({ standing }): Slot => (standing === 'holds' ? 'live' : 'empty')),
    ...Array.from({ length: room }, (): Slot => 'free'),
  ];
}

export const usedNumbers = ({ boxes, loose }: BoxesView): ReadonlySet<number> =>
  new Set([...boxes.flatMap(({ bags }) => bags), ...loose].map(({ bag }) => bag));

/** The number that a new bag in this box would go on with: none where the box is full or another bag has it. */
export function nextNumber({ box, room }: Pick<BoxSum, 'box' | 'room'>, used: ReadonlySet<number>): number | null {
  if (room === 0 || box.bags.length === 0) return null;
  const next = box.bags.reduce((most, { bag }) => Math.max(most, bag), 0) + 1;
  return used.has(next) ? null : next;
}

/** The box in which a bag stands, or null. */
export const boxWith = ({ boxes }: BoxesView, bag: number): string | null =>
  boxes.find(({ bags }) => bags.some((one) => one.bag === bag))?.name ?? null;
