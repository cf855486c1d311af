import { nearestTo } from '#core/find/candidates.ts';
import type { FindIndex } from '#core/find/find-index.ts';
import type { Part } from '#core/part/part.ts';
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
  const seen = new Map<string, readonly Because[]>();
  let best: { bag: Bag; lacks: readonly Because[] } | null = null;
  for (const bag of nearestTo(index, asked)) {
    if (bag.state === 'astray') continue;
    let lacks = seen.get(bag.partId);
    if (!lacks) {
      if (seen.size === MOST_PARTS) break;
      seen.set(bag.partId, (lacks = serve(bag.part, asked).because.filter(({ code }) => LACKS.has(code))));
    }
    if (lacks.length && (!best || isNearer(bag, lacks, best))) best = { bag, lacks };
  }
  return best && { bag: best.bag.number, because: said(best.bag, best.lacks) };
}

function isNearer(bag: Bag, lacks: readonly Because[], best: { bag: Bag; lacks: readonly Because[] }): boolean {
  const order = Number(bag.onHand === 0) - Number(best.bag.onHand === 0) || lacks.length - best.lacks.length;
  return order === 0 ? bag.number < best.bag.number : order < 0;
}

function said(bag: Bag, [first, ...more]: readonly Because[]): Because[] {
  const { fact = first?.code ?? '', has = '', asked = '' } = first?.args ?? {};
  return [{ code: 'nearest', args: { bag: bag.number, fact, has, asked } }, ...more];
}
