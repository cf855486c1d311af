import type { Bag } from '#core/stock/stock.ts';
import { promisesOf, usesOf, type BagPromise, type BagUse } from './bag-uses.ts';
import { readChange } from './change.ts';
import type { Tx } from './engine.ts';
import { readBagHistory, type BagEntry } from './history.ts';
import { readAlike, readBag } from './read-stock.ts';

/** One bag with what happened to it, what it is promised to, and where its pieces went. */
export interface BagPage {
  readonly bag: Bag;
  readonly movements: readonly BagEntry[];
  readonly reservedFor: readonly BagPromise[];
  /** other bags with the same part */
  readonly alike: readonly Bag[];
  readonly usedOn: readonly BagUse[];
  readonly change: number;
}

/** The live bag of that number, or null. */
export async function readBagPage(tx: Tx, number: number): Promise<BagPage | null> {
  const bag = await readBag(tx, number);
  if (!bag) return null;
  return {
    bag,
    movements: await readBagHistory(tx, number),
    reservedFor: await promisesOf(tx, bag.id),
    alike: await readAlike(tx, bag),
    usedOn: await usesOf(tx, bag.id),
    change: await readChange(tx),
  };
}
