import { USUAL_PRIORITY } from './plan-build.ts';
import { planBuilds, type Bom, type PlannedBom } from './plan-builds.ts';
import type { StockNow } from './follow-stock.ts';

/** Puts one BOM against what is free, as if no other were planned. Nothing is written. */
export async function planBom(
  now: StockNow,
  bom: Bom,
  boards: number,
  { spares }: { readonly spares: boolean },
): Promise<PlannedBom> {
  const alone = { key: 'build', kept: false, name: '', boards, priority: USUAL_PRIORITY, due: null, ...bom };
  const [planned] = await planBuilds(now, [alone], { spares });
  if (!planned) throw new Error('a plan for one build has one build');
  return planned;
}
