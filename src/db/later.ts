import type { Tx } from './engine.ts';

/** What an undo of a `fit-later` act must know. */
export interface LaterMemo {
  readonly board: string;
  readonly demand: string;
  readonly before: boolean;
  readonly after: boolean;
}

/** Demands of a board that are left off for now. */
export async function readLater(tx: Tx, board: string): Promise<string[]> {
  const rows = await tx.selectFrom('later').select('demand').where('board', '=', board).orderBy('demand').execute();
  return rows.map(({ demand }) => demand);
}

export async function isLater(tx: Tx, board: string, demand: string): Promise<boolean> {
  const row = await tx
    .selectFrom('later')
    .select('demand')
    .where('board', '=', board)
    .where('demand', '=', demand)
    .executeTakeFirst();
  return row !== undefined;
}

/** Leaves a demand of a board off for now, or fits it again. */
export async function writeLater(tx: Tx, board: string, demand: string, later: boolean): Promise<void> {
  await tx.deleteFrom('later').where('board', '=', board).where('demand', '=', demand).execute();
  if (later) await tx.insertInto('later').values({ board, demand }).execute();
}
