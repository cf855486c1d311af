import { done, refuse } from '#core/stock/refusal.ts';
import { findBoard, insertBoard, insertRevision, revisionNames } from '#db/boards.ts';
import { action, type Action } from './action.ts';
import { begin } from './begin.ts';
import { firstTrouble, nameTrouble } from './checks.ts';
import type { SaveBoardInput, SaveBoardResult } from './inputs.ts';

/** Keeps a BOM as a revision of a board, its lines as they were read. Choices belong to the board and go on to its next revision. */
export const saveBoard: Action<SaveBoardInput, SaveBoardResult> = action('saveBoard', async (tx, clock, who, input) => {
  const name = input.board.trim();
  if (name === '') return refuse('not-valid', { field: 'board', received: input.board, expected: 'name' });
  const trouble = firstTrouble(nameTrouble('board', name), nameTrouble('revision', input.revision?.trim() || null));
  if (trouble) return { ok: false, refusal: trouble };
  if (input.lines.length === 0) return refuse('nothing-to-do');
  const known = await findBoard(tx, name);
  const { names, nextOrd } = known ? await revisionNames(tx, known.id) : { names: [], nextOrd: 1 };
  const revision = input.revision?.trim() || nextRevision(names, nextOrd);
  if (names.includes(revision)) return refuse('not-valid', { field: 'revision', received: revision, expected: 'new-revision' });

  const begun = await begin(tx, clock, who, input, { kind: 'board-saved' });
  if (!begun.ok) return begun;
  const boardId = known?.id ?? (await insertBoard(tx, name));
  const source = input.source ?? null;
  const revisionId = await insertRevision(tx, input.id, {
    board: boardId,
    name: revision,
    ord: nextOrd,
    source,
    lines: input.lines,
  });
  return done({
    act: input.id,
    repeat: false,
    change: begun.value,
    warnings: [],
    board: name,
    boardId,
    revision,
    revisionId,
    lines: input.lines.length,
  });
});

/** The first whole number that is free, from the place of the new revision on. */
export function nextRevision(names: readonly string[], from: number): string {
  let number = from;
  while (names.includes(String(number))) number++;
  return String(number);
}
