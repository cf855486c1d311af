import { demandKey } from '#core/part/demand-key.ts';
import { done, refuse } from '#core/stock/refusal.ts';
import { readBoard } from '#db/boards.ts';
import { isLater, writeLater, type LaterMemo } from '#db/later.ts';
import { action, type Action, type Warning } from './action.ts';
import { begin } from './begin.ts';
import type { FitLaterInput, FitLaterResult } from './inputs.ts';

/**
 * Leaves the lines of a board with a demand off for now, or fits them again. It holds for later revisions too: whatever plans or
 * reserves the board takes nothing for them. What a build has already reserved stays with it.
 */
export const fitLater: Action<FitLaterInput, FitLaterResult> = action('fitLater', async (tx, clock, who, input) => {
  const found = await readBoard(tx, input.board);
  if (!found) return refuse('no-such-board', { board: input.board });
  const { board, lines } = found;
  const { demand, later } = input;
  const alike = lines.filter(({ part }) => demandKey(part) === demand).map(({ row }) => row);
  if (later && alike.length === 0) return refuse('not-valid', { field: 'demand', received: demand, expected: 'demand-of-board' });
  const before = await isLater(tx, board.id, demand);
  if (before === later) return refuse('nothing-to-do');
  const memo: LaterMemo = { board: board.id, demand, before, after: later };
  const begun = await begin(tx, clock, who, input, { kind: 'fit-later', memo });
  if (!begun.ok) return begun;
  await writeLater(tx, board.id, demand, later);
  const [row = 0, ...others] = [...alike].toSorted((a, b) => Number(b === input.row) - Number(a === input.row));
  const warnings: Warning[] = others.length > 0 ? [{ code: 'same-demand', args: { row, rows: others.join(', ') } }] : [];
  return done({ act: input.id, repeat: false, change: begun.value, warnings, board: board.name, demand, later });
});
