import { sql } from 'kysely';
import { takeChange } from './change.ts';
import { NAMES } from './dump.ts';
import type { Engine, Tx } from './engine.ts';
import { appendOnly } from './migrations/0001-ledger.ts';
import { writeBegun } from './setting.ts';

const APPEND_ONLY = ['movement', 'bag_change'] as const;

/**
 * Takes everything out of the lab but its devices and drafts, and answers the change number of that; numbers of changes go on
 * rising. The tables that are only ever added to are opened for it inside the transaction: nobody sees them open.
 */
export async function emptyLab(tx: Tx, engine: Engine): Promise<number> {
  for (const table of APPEND_ONLY) await sql.raw(opened(engine, table)).execute(tx);
  for (const table of NAMES.toReversed()) await tx.deleteFrom(table).execute();
  await tx.deleteFrom('kept_draft').execute(); // their acts are gone
  if (engine === 'postgres') await sql`set constraints all immediate`.execute(tx); // its tables can't be closed before
  for (const table of APPEND_ONLY) await sql.raw(closed(engine, table)).execute(tx);
  const change = await takeChange(tx);
  await writeBegun(tx, change);
  return change;
}

function opened(engine: Engine, table: string): string {
  return engine === 'postgres' ? `alter table ${table} disable trigger ${table}_append_only` : `drop trigger ${table}_no_delete`;
}

function closed(engine: Engine, table: string): string {
  if (engine === 'postgres') return `alter table ${table} enable trigger ${table}_append_only`;
  const trigger = appendOnly(engine, table).find((statement) => statement.startsWith(`create trigger ${table}_no_delete`));
  if (trigger === undefined) throw new Error(`nothing keeps ${table} from losing rows`);
  return trigger;
}
