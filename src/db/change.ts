import type { Tx } from './engine.ts';

/** The number of the last change that was committed; 0 in a new lab. */
export async function readChange(tx: Tx): Promise<number> {
  const row = await tx.selectFrom('change').select('number').where('id', '=', 1).executeTakeFirstOrThrow();
  return row.number;
}

/** The number that this writing transaction will take at its end; sure, since writers take turns. */
export async function nextChange(tx: Tx): Promise<number> {
  return (await readChange(tx)) + 1;
}

/** Takes the number: the last thing that a writing transaction does. */
export async function takeChange(tx: Tx): Promise<number> {
  const row = await tx
    .updateTable('change')
    .set((eb) => ({ number: eb('number', '+', 1) }))
    .where('id', '=', 1)
    .returning('number')
    .executeTakeFirstOrThrow();
  return row.number;
}
