import { done, refuse } from '#core/stock/refusal.ts';
import { findBag } from '#db/bags.ts';
import { findBoard, findChoice, writeChoice, type KeptChoice } from '#db/boards.ts';
import { action, type Action } from './action.ts';
import { begin } from './begin.ts';
import type { ChooseInput, ChooseResult } from './inputs.ts';

/** What an undo of a choice must know. */
export interface ChoiceMemo {
  readonly board: string;
  readonly demand: string;
  readonly before: KeptChoice | null;
  readonly after: KeptChoice | null;
}

/** Takes a bag for a demand of a board, and accepts what is to be checked about it; it holds for later revisions too. */
export const choose: Action<ChooseInput, ChooseResult> = action('choose', async (tx, clock, who, input) => {
  const board = await findBoard(tx, input.board);
  if (!board) return refuse('no-such-board', { board: input.board });
  const bag = input.bag === null ? null : await findBag(tx, input.bag);
  if (input.bag !== null && !bag) return refuse('no-such-bag', { bag: input.bag });
  const before = await findChoice(tx, board.id, input.demand);
  const after = bag ? { bag: bag.id, accept: input.accept } : null;
  if (before?.bag === after?.bag && before?.accept === after?.accept) return refuse('nothing-to-do');

  const memo: ChoiceMemo = { board: board.id, demand: input.demand, before, after };
  const begun = await begin(tx, clock, who, input, { kind: 'chosen', memo });
  if (!begun.ok) return begun;
  await writeChoice(tx, board.id, input.demand, after);
  const { demand, accept } = input;
  return done({
    act: input.id,
    repeat: false,
    change: begun.value,
    warnings: [],
    board: board.name,
    demand,
    bag: input.bag,
    accept,
  });
});
