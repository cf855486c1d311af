import { builtOnce } from './built-once.ts';
import type { Tx } from './engine.ts';

const lastNumber = builtOnce<Record<string, never>, { number: number }>((tx) =>
  tx.selectFrom('change').select('number').where('id', '=', 1),
);

const raisedNumber = builtOnce<Record<string, never>, { number: number }>((tx) =>
  tx
    .updateTable('change')
    .set((eb) => ({ number: eb('number', '+', 1) }))
    .where('id', '=', 1)
    .returning('number'),
);

function only(rows: readonly { readonly number: number }[]): number {
  const [row] = rows;
  if (!row) throw new Error('the row of the change number is gone');
  return row.number;
}

/** The number of the last change that was committed; 0 in a new lab. */
export async function readChange(tx: Tx): Promise<number> {
  return only(await lastNumber(tx, {}));
}

/** The number that this writing transaction will take at its end; sure, since writers take turns. */
export async function nextChange(tx: Tx): Promise<number> {
  return (await readChange(tx)) + 1;
}

/** Takes the number: the last thing that a writing transaction does. */
export async function takeChange(tx: Tx): Promise<number> {
  return only(await raisedNumber(tx, {}));
}
