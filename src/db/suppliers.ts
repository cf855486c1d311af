import type { Tx } from './engine.ts';
import { chunks } from './rows.ts';

/** Who delivered what bags still count as received, by bag id; of all bags where none are named. */
export async function readSuppliers(tx: Tx, bags: readonly string[] | null): Promise<Map<string, string[]>> {
  const query = tx
    .selectFrom('movement')
    .innerJoin('lot', 'lot.id', 'movement.lot')
    .select(['movement.bag', 'lot.supplier'])
    .where('lot.supplier', 'is not', null)
    .groupBy(['movement.bag', 'lot.supplier'])
    .having((having) => having.fn.sum('movement.delta'), '>', 0)
    .orderBy('lot.supplier');
  const rows = bags === null ? await query.execute() : [];
  for (const some of bags === null ? [] : chunks(bags)) rows.push(...(await query.where('movement.bag', 'in', some).execute()));
  const suppliers = new Map<string, string[]>();
  for (const { bag, supplier } of rows) if (supplier !== null) suppliers.set(bag, [...(suppliers.get(bag) ?? []), supplier]);
  return suppliers;
}
