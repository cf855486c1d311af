import { LACKS } from './nearest.ts';
import { judgeLine } from './judge.ts';
import { serve } from '#core/serve/serve.ts';
import type { Because, Verdict } from '#core/serve/verdict.ts';
import type { Bag } from '#core/stock/stock.ts';
import type { ReadRow } from './bom.ts';

/** How one bag answers a line, and the reason that weighs most against it; null where nothing does. */
export interface ByHand {
  readonly verdict: Verdict;
  readonly against: Because | null;
}

/** A bag that a person takes for a line: `missing` where a stated fact is below or different, 2 A for 1 A, so that taking it is an override. */
export function byHand(line: ReadRow, bag: Bag): ByHand {
  const { verdict, because } = judgeLine(line, () => [bag])[0] ?? {
    verdict: 'missing',
    because: serve(bag.part, line.part).because,
  };
  const against = because.find(({ code }) => LACKS.has(code)) ?? because.find(({ code }) => code !== 'same') ?? null;
  return { verdict, against };
}
