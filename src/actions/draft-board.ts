import { findBoard, readBoards, revisionNames } from '#db/boards.ts';
import type { Tx } from '#db/database.ts';
import type { Draft } from '#db/drafts.ts';
import { nextRevision } from './save-board.ts';

/** What a BOM would be kept as. */
export interface DraftBoard {
  readonly board: string;
  /** null where the name of the board is open */
  readonly revision: string | null;
  /** the board is there already */
  readonly known: boolean;
  /** the board has a revision of that name */
  readonly taken: boolean;
}

/** The board and revision as they were told, else by the name of the file and the next number. */
export async function draftBoard(tx: Tx, { name, told }: Pick<Draft, 'name' | 'told'>): Promise<DraftBoard> {
  const suggested = boardOfFile(name);
  const board = told.board ?? (await knownAs(tx, suggested)) ?? suggested;
  const found = await findBoard(tx, board);
  const { names, nextOrd } = found ? await revisionNames(tx, found.id) : { names: [], nextOrd: 1 };
  const revision = told.revision ?? nextRevision(names, nextOrd);
  return { board, revision, known: found !== null, taken: names.includes(revision) };
}

/** A board that is there and differs in capitals alone. */
async function knownAs(tx: Tx, suggested: string): Promise<string | null> {
  const plain = suggested.toLowerCase();
  return (await readBoards(tx)).find(({ name }) => name.toLowerCase() === plain)?.name ?? null;
}

/** `tide-logger_BOM.csv` → `tide-logger`. */
export function boardOfFile(file: string): string {
  const name = file.replace(/\.[^.]{1,5}$/, '').trim();
  const short = name
    .replace(/^bom[\s_.-]+|[\s_.-]+bom$/i, '')
    .replaceAll('_', ' ')
    .trim();
  return short || name || file;
}
