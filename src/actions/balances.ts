import { bagsById, promisesOf, type HeldBag } from '#db/bags.ts';
import type { Tx } from '#db/database.ts';
import type { Warning } from './action.ts';
import type { BagBalance } from './inputs.ts';

export function balanceOf(bag: HeldBag): BagBalance {
  return { bag: bag.number, onHand: bag.onHand, sure: bag.sure, free: bag.sure - bag.reserved };
}

/** What bags hold now, by number. */
export async function balancesOf(tx: Tx, ids: readonly string[]): Promise<BagBalance[]> {
  const bags = await bagsById(tx, ids);
  return [...bags.values()].map(balanceOf).toSorted((a, b) => a.bag - b.bag);
}

/** Warnings of bags, as they are now, that hold less than was promised of them; each names its builds. */
export async function brokenPromises(tx: Tx, bags: Iterable<HeldBag>): Promise<Warning[]> {
  const warnings: Warning[] = [];
  for (const bag of bags) {
    const free = bag.sure - bag.reserved;
    if (free >= 0 || bag.reserved === 0) continue;
    const builds = (await promisesOf(tx, bag.id)).map((promise) => promise.name).join(', ');
    warnings.push({ code: 'promise-broken', args: { bag: bag.number, free, reserved: bag.reserved, builds } });
  }
  return warnings;
}
