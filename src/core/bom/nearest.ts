import { nearestTo } from '#core/find/candidates.ts';
import type { FindIndex } from '#core/find/find-index.ts';
import type { Part } from '#core/part/part.ts';
import { isForMains } from '#core/serve/safety.ts';
import { serve } from '#core/serve/serve.ts';
import type { Because, BecauseCode } from '#core/serve/verdict.ts';
import type { Bag } from '#core/stock/stock.ts';

/** The bag that lacks least, and what it lacks: first as `nearest`, then whatever else. */
export interface Nearest {
  readonly bag: number;
  readonly because: readonly Because[];
}

const MOST_PARTS = 200;
/** Reasons by which a bag is no answer. */
export const LACKS: ReadonlySet<BecauseCode> = new Set<BecauseCode>(['below', 'differs', 'safety', 'polarised']);

/** For a line that nothing serves: the bag with the fewest facts that fall short or differ; null where nothing is like it. */
export function nearestBag(index: FindIndex, asked: Part): Nearest | null {
  const [best] = nearestBags(index, asked);
  return best ? { bag: best.bag.number, because: said(best.bag, best.lacks) } : null;
}

/** A bag that is no answer, and what it lacks. */
export interface Lacking {
  readonly bag: Bag;
  readonly lacks: readonly Because[];
}

/** Bags that are no answer though something like it: those that hold something first, then those that lack least. */
export function nearestBags(index: FindIndex, asked: Part): Lacking[] {
  const seen = new Map<string, readonly Because[]>();
  const found: Lacking[] = [];
  for (const bag of nearestTo(index, asked)) {
    if (bag.state === 'astray') continue;
    let lacks = seen.get(bag.partId);
    if (!lacks) {
      if (seen.size === MOST_PARTS) break;
      seen.set(bag.partId, (lacks = serve(bag.part, asked).because.filter(({ code }) => LACKS.has(code))));
    }
    if (lacks.length) found.push({ bag, lacks });
  }
  // one for the mains is near only where one is asked
  const mains = ({ bag }: Lacking): number => Number(!isForMains(asked) && isForMains(bag.part));
  return found.toSorted((a, b) => mains(a) - mains(b) || byLack(a, b));
}

function byLack(a: Lacking, b: Lacking): number {
  return (
    Number(a.bag.onHand === 0) - Number(b.bag.onHand === 0) || a.lacks.length - b.lacks.length || a.bag.number - b.bag.number
  );
}

function said(bag: Bag, [first, ...more]: readonly Because[]): Because[] {
  const { fact = first?.code ?? '', has = '', asked = '' } = first?.args ?? {};
  return [{ code: 'nearest', args: { bag: bag.number, fact, has, asked } }, ...more];
}
