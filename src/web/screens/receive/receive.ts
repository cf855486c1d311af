import type { BagView, BoxPicture } from '#api/bags.ts';
import { depthOf } from '../../ui/depth.ts';
import type { Slot } from '../../ui/slots.tsx';

/** The next number to give: after the last one that was given here, else after the greatest; never one that is taken. */
export function nextFree(bags: readonly Pick<BagView, 'bag'>[], last: number | null): number {
  const taken = new Set(bags.map(({ bag }) => bag));
  let next = last === null ? bags.reduce((most, { bag }) => Math.max(most, bag), 0) + 1 : last + 1;
  while (taken.has(next)) next++;
  return next;
}

/** A typed bag number: `12` → 12; what is none → null. */
export function bagNumber(text: string): number | null {
  const plain = text.trim();
  return /^[1-9]\d{0,8}$/.test(plain) ? Number(plain) : null;
}

export interface Ahead {
  readonly slots: readonly Slot[];
  readonly rank: number;
  readonly places: number;
  readonly after: number | null;
  readonly first: number | null;
  readonly last: number | null;
  /** a bag stands in each of its places already */
  readonly full: boolean;
}

/** A look into the box with the bag that is to come: bags stand in the order of their numbers. */
export function boxAhead(box: BoxPicture, bag: number): Ahead {
  const others = box.bags.filter((one) => one.bag !== bag);
  const bags = [...others, { bag, standing: 'holds' as const }].toSorted((a, b) => a.bag - b.bag);
  const depth = depthOf(bags, bag);
  const stand = bags.map((one): Slot => (one.bag === bag ? 'hit' : one.standing === 'holds' ? 'live' : 'empty'));
  const free = Array.from({ length: Math.max(0, box.places - bags.length) }, (): Slot => 'free');
  return {
    slots: [...stand, ...free],
    rank: depth?.rank ?? 1,
    places: Math.max(box.places, bags.length),
    after: depth?.after ?? null,
    first: bags[0]?.bag ?? null,
    last: bags.at(-1)?.bag ?? null,
    full: others.filter(({ standing }) => standing === 'holds').length >= box.places,
  };
}

/** A bag that was taken in on this page. */
export interface TakenIn {
  readonly act: string;
  readonly bag: number;
  readonly name: string;
  readonly rest: string;
  readonly code: string;
  readonly box: string | null;
  readonly quantity: number;
  readonly about: boolean;
  /** it went into a bag that was there */
  readonly added: boolean;
  readonly doubts: readonly string[];
  readonly back: boolean;
}

const KEPT = 'bagatelle-taken-in';
const MOST = 200;

/** What this window took in, so that a reload keeps its list; what can't be read is no list. */
export function readTakenIn(storage: Pick<Storage, 'getItem'>): readonly TakenIn[] {
  const text = storage.getItem(KEPT);
  if (text === null) return [];
  try {
    const kept: unknown = JSON.parse(text);
    return Array.isArray(kept) ? kept.filter(isTakenIn) : [];
  } catch (error) {
    if (error instanceof SyntaxError) return [];
    throw error;
  }
}

export function keepTakenIn(storage: Pick<Storage, 'setItem'>, list: readonly TakenIn[]): void {
  storage.setItem(KEPT, JSON.stringify(list.slice(0, MOST)));
}

function isTakenIn(one: unknown): one is TakenIn {
  return (
    typeof one === 'object' &&
    one !== null &&
    'act' in one &&
    typeof one.act === 'string' &&
    'bag' in one &&
    typeof one.bag === 'number' &&
    'name' in one &&
    typeof one.name === 'string' &&
    'doubts' in one &&
    Array.isArray(one.doubts)
  );
}
