import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import { readBoard } from '#db/boards.ts';
import type { Lab } from '#db/database.ts';
import type { FoundBom } from './reserve-bom.ts';

/** A saved board as a BOM: its newest revision, unless one is named. */
export async function savedBom(
  lab: Lab,
  { board: name, revision: wanted }: { readonly board: string; readonly revision?: string },
): Promise<Outcome<FoundBom>> {
  const found = await lab.read((tx) => readBoard(tx, name, wanted));
  if (!found) return refuse('no-such-board', { board: name });
  const { board, revision, lines: rows, choices, later } = found;
  return done({ name: board.name, board: board.name, revision: revision.name, rows, choices, later });
}
