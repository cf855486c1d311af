import type { Bag } from '#core/stock/stock.ts';
import type { WhyCode, Why } from './why.ts';

/** Where a found bag stands in the answer: as typed; the same in another package; near it; nothing left in it. */
export type FoundGroup = 'typed' | 'package' | 'near' | 'exhausted';

const SHORT: ReadonlySet<WhyCode> = new Set<WhyCode>(['near', 'other', 'not-stated', 'without', 'meant']);

/** By the reasons: all that keeps a bag from a full answer is its package, and its value is the one asked → `package`. */
export function groupOf(bag: Bag, full: boolean, whys: readonly Why[]): FoundGroup {
  if (bag.onHand === 0) return 'exhausted';
  if (full) return 'typed';
  const short = whys.filter(({ code }) => SHORT.has(code));
  const inPackage = short.every(({ code, args }) => code !== 'near' && args['fact'] === 'package');
  return inPackage && short.length > 0 && whys.some(isSame) ? 'package' : 'near';
}

function isSame({ code, args }: Why): boolean {
  return code === 'part-number' || (code === 'fact' && args['fact'] !== 'package');
}
