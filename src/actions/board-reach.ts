import { matchBom } from '#core/bom/match.ts';
import { completeBoards, limitsOf } from '#core/kit/boards.ts';
import type { Demand, Need } from '#core/kit/kit.ts';
import { problemOf } from '#core/kit/problem.ts';
import { readBoard, readBoards, type BoardRevision } from '#db/boards.ts';
import { readChange } from '#db/change.ts';
import type { Lab } from '#db/database.ts';
import type { FollowedStock, StockNow } from './follow-stock.ts';

/** How many of a board what is free makes, were nothing else built. */
export interface Reach {
  readonly board: string;
  readonly buildable: number;
  /** nobody counted on: it may be more */
  readonly most: boolean;
  readonly limitedBy: readonly ReachLimit[];
}

/** A bag that runs out, or a line that no bag answers, with the boards that it lets be built. */
type ReachLimit = { readonly bag: number; readonly reaches: number } | { readonly line: number; readonly reaches: number };

/** Where counting ends. */
const MOST_COUNTED = 999;

interface Reaches {
  readonly change: number;
  readonly boards: readonly Reach[];
}

/** The newest revision of every board alone against what is free; worked out once for each change of the lab, whoever asks. */
export function followReach(lab: Lab, stock: FollowedStock): { current(): Promise<Reaches> } {
  let asked: { readonly at: number; readonly told: Promise<Reaches> } | null = null;
  return {
    async current() {
      const { change: at } = await stock.current();
      if (asked?.at === at) return asked.told;
      const told = reaches(lab, stock);
      const mine = { at, told };
      asked = mine;
      try {
        return await told;
      } catch (error) {
        if (asked === mine) asked = null; // the next who asks tries again
        throw error;
      }
    },
  };
}

async function reaches(lab: Lab, stock: FollowedStock): Promise<Reaches> {
  const { change, revisions } = await lab.read(async (tx) => {
    const found: BoardRevision[] = [];
    for (const { name } of await readBoards(tx)) {
      const board = await readBoard(tx, name);
      if (board) found.push(board);
    }
    return { change: await readChange(tx), revisions: found };
  });
  const now = await stock.current(); // after the last wait: the stock in memory moves on
  return { change: Math.min(change, now.change), boards: revisions.map((board) => reachOf(now, board)) };
}

/** Whole boards by flows alone: which bags they come from is nothing to this, so nothing is solved. */
function reachOf(now: StockNow, { board, lines, choices, later }: BoardRevision): Reach {
  const matched = matchBom(lines, now.index, choices, MOST_COUNTED, later);
  const needs = matched.flatMap(({ row, refs, perBoard, fitted, candidates }, at): Need[] =>
    fitted && perBoard > 0 ? [{ line: String(at), row, refs, perBoard, candidates }] : [],
  );
  const demand: Demand = { build: board.id, boards: MOST_COUNTED, priority: 0, due: null, needs };
  const problem = problemOf(now.stock(), [demand]);
  const boards = completeBoards(problem);
  const buildable = boards[0] ?? 0;
  const limitedBy = limitsOf(problem, boards, 0).map((limit): ReachLimit =>
    'bag' in limit ? limit : { line: matched[Number(limit.line)]?.row ?? 0, reaches: limit.reaches },
  );
  return { board: board.name, buildable, most: buildable === MOST_COUNTED, limitedBy };
}
