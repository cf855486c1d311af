import type { Box } from '#core/stock/stock.ts';
import type { Tx } from './engine.ts';

export const BOX_PLACES = 60;

/** Enters boxes that are not there yet, in the order of the walk after those that are. */
export async function ensureBoxes(tx: Tx, act: string, names: readonly string[], places: number = BOX_PLACES): Promise<void> {
  const known = await tx.selectFrom('box').select(['name', 'ord', 'live']).execute();
  let ord = Math.max(0, ...known.map((box) => box.ord));
  for (const name of new Set(names)) {
    const box = known.find((one) => one.name === name);
    if (box?.live === 1) continue;
    if (box) await tx.updateTable('box').set({ live: 1 }).where('name', '=', name).execute();
    else await tx.insertInto('box').values({ name, places, lifts: 0, ord: ++ord, live: 1, made_by: act }).execute();
  }
}

/** Boxes that the act made and that hold no live bag any more are not there any more. */
export async function dropEmptyBoxes(tx: Tx, act: string): Promise<void> {
  await tx
    .updateTable('box')
    .set({ live: 0 })
    .where('made_by', '=', act)
    .where((eb) =>
      eb.not(eb.exists(eb.selectFrom('bag').select('bag.id').whereRef('bag.box', '=', 'box.name').where('bag.live', '=', 1))),
    )
    .execute();
}

export async function readBoxes(tx: Tx): Promise<Box[]> {
  const rows = await tx.selectFrom('box').selectAll().where('live', '=', 1).orderBy('ord').orderBy('name').execute();
  return rows.map(({ name, places, lifts, ord }) => ({ name, places, lifts, order: ord }));
}

/** Where a box stands in the walk, and how many stand on it. */
export type BoxOrder = Pick<Box, 'name' | 'order' | 'lifts'>;

/** What an undo of a `boxes-arranged` act must know. */
export interface OrderMemo {
  readonly before: readonly BoxOrder[];
  readonly after: readonly BoxOrder[];
}

export async function writeOrder(tx: Tx, boxes: readonly BoxOrder[]): Promise<void> {
  for (const { name, order, lifts } of boxes)
    await tx.updateTable('box').set({ ord: order, lifts }).where('name', '=', name).execute();
}
