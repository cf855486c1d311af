import type { Choice, ReadRow } from '#core/bom/bom.ts';
import type { MatchedLine } from '#core/bom/match.ts';
import { mayPlan } from '#core/kit/problem.ts';
import { free, type Bag } from '#core/stock/stock.ts';
import type { BoardRevision } from '#db/boards.ts';
import type { StockNow } from './follow-stock.ts';
import { planBom } from './plan-bom.ts';
import type { PlannedBom, PlannedBomLine } from './plan-builds.ts';

/** A line of a saved board against the bags. */
export interface BoardLineFound {
  readonly line: PlannedBomLine;
  readonly row: ReadRow;
  readonly later: boolean;
  readonly choice: Choice | null;
  /** the first bag that it gets, or else the one to look at */
  readonly holds: Bag | null;
  /** where nothing serves: the bag that lacks least; of an open check: the bag to look at */
  readonly nearest: number | null;
  /** free in the bags that may be taken for it, and left in them after the plan */
  readonly free: number;
  readonly left: number;
  /** boards that these bags alone let be built; null where it needs none */
  readonly reaches: number | null;
  /** free in the bag that waits for a person's word; null where none does */
  readonly waits: number | null;
}

export interface BoardLinesFound {
  readonly planned: PlannedBom;
  readonly lines: readonly BoardLineFound[];
}

/** Every line of a board for so many boards, against what is free, as if no other build were planned. */
export async function boardLines(now: StockNow, board: BoardRevision, boards: number): Promise<BoardLinesFound> {
  const { lines: rows, choices, later } = board;
  // before the first wait: the stock in memory moves on while the plan is made
  const bags: Bags = new Map(now.stock().bags.map((bag) => [bag.number, bag]));
  const planned = await planBom(now, { rows, choices, later }, boards, { spares: false });
  const taken = takenOf(planned);
  const lines = planned.lines.flatMap((line, at): BoardLineFound[] => {
    const [row, matched] = [rows[at], planned.matched[at]];
    if (!row || !matched) return [];
    const nearest = nearestOf(matched);
    const first = line.takes[0]?.bag ?? matched.candidates[0]?.bag ?? nearest;
    return [
      {
        line,
        row,
        later: row.fitted && later.includes(line.demand),
        choice: choices.find(({ demand }) => demand === line.demand) ?? null,
        holds: first === null ? null : (bags.get(first) ?? null),
        nearest,
        waits: waitsOf(bags, matched),
        ...stockOf(bags, matched, taken),
      },
    ];
  });
  return { planned, lines };
}

/** Pieces that the plan takes from each bag, for whatever line. */
function takenOf({ lines }: PlannedBom): ReadonlyMap<number, number> {
  const taken = new Map<number, number>();
  for (const { bag, take } of lines.flatMap(({ takes }) => takes)) taken.set(bag, (taken.get(bag) ?? 0) + take);
  return taken;
}

function nearestOf({ candidates, nearest }: MatchedLine): number | null {
  return candidates.some(mayPlan) ? null : (candidates[0]?.bag ?? nearest);
}

type Bags = ReadonlyMap<number, Bag>;

/** What is free in the best bag, where only a person's word keeps it from being taken. */
function waitsOf(bags: Bags, { candidates, fitted }: MatchedLine): number | null {
  const bag = fitted && !candidates.some(mayPlan) ? bags.get(candidates[0]?.bag ?? 0) : undefined;
  return bag ? Math.max(0, free(bag)) : null;
}

function stockOf(
  bags: Bags,
  { candidates, perBoard, fitted }: MatchedLine,
  taken: ReadonlyMap<number, number>,
): Pick<BoardLineFound, 'free' | 'left' | 'reaches'> {
  const mine = new Set(candidates.filter(mayPlan).map(({ bag }) => bag));
  let [sum, left] = [0, 0];
  for (const number of mine) {
    const bag = bags.get(number);
    const pieces = bag ? Math.max(0, free(bag)) : 0;
    sum += pieces;
    left += pieces - (taken.get(number) ?? 0);
  }
  return { free: sum, left, reaches: fitted && perBoard > 0 ? Math.floor(sum / perBoard) : null };
}
