import { partCode } from '#core/part/part-code.ts';
import type { Part } from '#core/part/part.ts';
import type { Bag, Stock } from '#core/stock/stock.ts';
import { seeded, type Seeded } from './seeded.ts';
import { syntheticPart } from './synthetic-part.ts';

const PLACES = 60;

/** A lab of so many bags, the same for the same seed: bag 1 in box A, 60 to a box; one bag in twelve is exhausted, a few are astray. */
export function syntheticStock(bags: number, seed = 1): Stock {
  const chance = seeded(seed);
  const known = new Map<string, { id: string; part: Part }>();
  const all = Array.from({ length: bags }, (_, at) => {
    const made = syntheticPart(chance);
    const code = partCode(made);
    const key = `${code} ${made.text}`;
    const part = known.get(key) ?? { id: `part-${known.size + 1}`, part: made };
    known.set(key, part);
    return bagOf(chance, at + 1, part.id, code, part.part);
  });
  const boxes = Array.from({ length: Math.ceil(bags / PLACES) }, (_, at) => ({
    name: boxName(at),
    places: PLACES,
    lifts: at % 4,
    order: at,
  }));
  return { change: 1, bags: all, boxes };
}

function bagOf(chance: Seeded, number: number, partId: string, code: string, part: Part): Bag {
  const onHand = chance.next() < 1 / 12 ? 0 : chance.whole(1, 400);
  return {
    id: `bag-${number}`,
    number,
    partId,
    code,
    part,
    holder: 'zip-bag',
    unit: 'piece',
    box: boxName(Math.floor((number - 1) / PLACES)),
    place: String(((number - 1) % PLACES) + 1),
    state: chance.next() < 0.003 ? 'astray' : 'sound',
    onHand,
    sure: onHand,
    reserved: 0,
    oldest: null,
    toCount: false,
  };
}

/** 0 → A, 25 → Z, 26 → AA. */
export function boxName(at: number): string {
  const letter = String.fromCodePoint(65 + (at % 26));
  return at < 26 ? letter : boxName(Math.floor(at / 26) - 1) + letter;
}
