import { matchBom, type Match, type MatchedLine } from '#core/bom/match.ts';
import { free } from '#core/stock/stock.ts';
import type { StockNow } from './follow-stock.ts';
import type { Bom } from './plan-builds.ts';

/** A bag that may answer a line, with what is in it. */
export interface RowCandidate extends Match {
  readonly code: string;
  readonly free: number;
}

/** One line of a BOM against the bags, with every bag that may answer it, the best first; null where the BOM has no such row. */
export function matchRow(
  { stock, index }: Pick<StockNow, 'stock' | 'index'>,
  { rows, choices, later }: Bom,
  row: number,
  boards: number,
): { readonly line: MatchedLine; readonly candidates: readonly RowCandidate[] } | null {
  const mine = rows.filter((one) => one.row === row);
  const [line] = matchBom(mine, index, choices, boards, later);
  if (!line) return null;
  const bags = new Map(stock().bags.map((bag) => [bag.number, bag]));
  const candidates = line.candidates.map((one): RowCandidate => {
    const bag = bags.get(one.bag);
    return { ...one, code: bag?.code ?? '', free: bag ? free(bag) : 0 };
  });
  return { line, candidates };
}
