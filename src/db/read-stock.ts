import type { Kind } from '#core/part/part.ts';
import type { Bag, BagState, BagUnit, Box, Holder, Stock } from '#core/stock/stock.ts';
import { readBoxes } from './boxes.ts';
import { readChange } from './change.ts';
import type { Tx } from './engine.ts';
import { readFacts } from './parts.ts';
import { readSuppliers } from './suppliers.ts';

/** The whole stock, live bags in the order of their numbers. */
export async function readStock(tx: Tx): Promise<Stock> {
  const rows = await bagRows(tx).where('bag.live', '=', 1).orderBy('bag.number').execute();
  return { change: await readChange(tx), bags: await bagsOf(tx, rows, null), boxes: await readBoxes(tx) };
}

/** What changed after a change number: `bags` are as they are now, `gone` are ids of bags that are no more. */
export interface StockChanges {
  readonly change: number;
  readonly bags: readonly Bag[];
  readonly gone: readonly string[];
  readonly boxes: readonly Box[];
}

/** For followers that keep the stock in memory: read once with `readStock`, then go on from its change number. */
export async function readStockSince(tx: Tx, change: number): Promise<StockChanges> {
  const rows = await bagRows(tx).where('bag.changed', '>', change).orderBy('bag.number').execute();
  const live = rows.filter((row) => row.live === 1);
  return {
    change: await readChange(tx),
    bags: await bagsOf(tx, live, [...new Set(live.map((row) => row.part))]),
    gone: rows.filter((row) => row.live === 0).map((row) => row.id),
    boxes: await readBoxes(tx),
  };
}

/** One live bag by its number, or null. */
export async function readBag(tx: Tx, number: number): Promise<Bag | null> {
  const rows = await bagRows(tx).where('bag.live', '=', 1).where('bag.number', '=', number).execute();
  const [bag] = await bagsOf(
    tx,
    rows,
    rows.map((row) => row.part),
  );
  return bag ?? null;
}

/** Live bags with the same part as this one, by number, without it. */
export async function readAlike(tx: Tx, { id, partId }: Pick<Bag, 'id' | 'partId'>): Promise<Bag[]> {
  const rows = await bagRows(tx)
    .where('bag.live', '=', 1)
    .where('bag.part', '=', partId)
    .where('bag.id', '!=', id)
    .orderBy('bag.number')
    .execute();
  return bagsOf(tx, rows, [partId]);
}

const bagRows = (tx: Tx) =>
  tx
    .selectFrom('bag')
    .innerJoin('part', 'part.id', 'bag.part')
    .selectAll('bag')
    .select(['part.code', 'part.kind'])
    .select((eb) =>
      eb
        .selectFrom('reservation')
        .select((of) => of.fn.sum<number>('reservation.quantity').as('promised'))
        .whereRef('reservation.bag', '=', 'bag.id')
        .as('promised'),
    );

type BagRow = Awaited<ReturnType<ReturnType<typeof bagRows>['execute']>>[number];

async function bagsOf(tx: Tx, rows: readonly BagRow[], parts: readonly string[] | null): Promise<Bag[]> {
  const facts = await readFacts(tx, parts);
  const suppliers = await readSuppliers(tx, parts === null ? null : rows.map((row) => row.id));
  return rows.map((row) => ({
    id: row.id,
    number: row.number,
    partId: row.part,
    code: row.code,
    part: { kind: row.kind as Kind, facts: facts.get(row.part) ?? {}, text: row.text }, // as: only kinds of a `Part` are entered
    holder: row.holder as Holder, // as: only holders are entered
    unit: row.unit as BagUnit, // as: a CHECK of the table holds the words
    box: row.box,
    place: row.place,
    state: row.state as BagState, // as: a CHECK of the table holds the words
    onHand: row.on_hand,
    sure: row.sure,
    reserved: row.promised ?? 0,
    oldest: row.oldest,
    toCount: row.to_count === 1,
    ...suppliersOf(suppliers.get(row.id)),
  }));
}

function suppliersOf(suppliers: string[] | undefined): Pick<Bag, 'suppliers'> {
  return suppliers ? { suppliers } : {};
}
