import type { Bag } from '#core/stock/stock.ts';
import { touchedLast } from '#core/stock/touched.ts';
import type { Lab } from '#db/database.ts';
import { readActs } from '#db/history.ts';
import type { FollowedStock } from './follow-stock.ts';

const ACTS_LOOKED_AT = 30;

/** The bags touched last, the newest first, and the change number they stand at. */
export async function touchedBags(lab: Lab, stock: FollowedStock, limit: number): Promise<{ bags: Bag[]; change: number }> {
  const acts = await lab.read((tx) => readActs(tx, { limit: ACTS_LOOKED_AT }));
  const now = await stock.current();
  const bags = touchedLast(acts).flatMap((number) => now.bag(number) ?? []);
  return { bags: bags.slice(0, limit), change: now.change };
}
