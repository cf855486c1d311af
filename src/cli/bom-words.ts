import type { Bom } from '#actions/plan-builds.ts';
import type { ColumnRole } from '#core/bom/columns.ts';
import type { Outcome } from '#core/stock/refusal.ts';
import { readBoard } from '#db/boards.ts';
import type { Lab } from '#db/database.ts';
import { existsSync } from 'node:fs';
import { nameOfFile, readPath } from './read-path.ts';

/** A BOM that was named: of a file, or of a board that the lab keeps. */
export interface NamedBom extends Bom {
  readonly name: string;
  readonly board?: string;
  readonly revision?: string;
}

/**
 * The BOM of a word: a file where there is one, else a saved board. A file whose name is that of a board is put with the
 * choices that were made for the board, and what is left off it for now. `told` corrects what the columns of a file mean.
 */
export async function namedBom(
  lab: Lab,
  word: string,
  revision?: string,
  told?: ReadonlyMap<string, ColumnRole>,
): Promise<Outcome<NamedBom>> {
  if (!existsSync(word)) {
    const board = await lab.read((tx) => readBoard(tx, word, revision));
    if (!board)
      return {
        ok: false,
        refusal: /[./\\]/.test(word)
          ? { code: 'file-missing', args: { file: word } }
          : { code: 'no-such-board', args: { board: word } },
      };
    const { name } = board.board;
    const { revision: newest, lines: rows, choices, later } = board;
    return { ok: true, value: { name, board: name, revision: newest.name, rows, choices, later } };
  }
  const read = await readPath(word, told);
  if (!read.ok) return read;
  const name = nameOfFile(word);
  const board = await lab.read((tx) => readBoard(tx, name));
  return { ok: true, value: { name, rows: read.value.rows, choices: board?.choices ?? [], later: board?.later ?? [] } };
}
