import { CompiledQuery, sql, type Kysely } from 'kysely';
import type { Engine, EngineParts, Tx } from './engine.ts';
import { MIGRATIONS } from './migration-list.ts';
import { Refused } from './refused.ts';
import type { Schema } from './schema.ts';
import { writing } from './writing.ts';

/** compiled once, since every writing transaction asks it */
const NEWEST = CompiledQuery.raw('select coalesce(max(version), 0) as version from schema_version') as CompiledQuery<{
  version: number;
}>; // as: raw text knows no rows

/** One step of the schema, forward only. */
export interface Migration {
  /** `0001-…`; the number is the schema's version */
  readonly name: string;
  statements(engine: Engine): readonly string[];
}

/** Number of the newest schema that this program knows. */
export function knownSchema(migrations: readonly Migration[] = MIGRATIONS): number {
  return migrations.length;
}

/**
 * Brings the schema up to date, each step in a transaction of its own, after a backup where there is something to lose.
 * A schema newer than the program is refused (`newer-schema`) before anything is written.
 */
export async function migrate(parts: EngineParts, migrations: readonly Migration[] = MIGRATIONS): Promise<void> {
  const found = await schemaVersion(parts.writer, parts.engine);
  if (found > migrations.length) throw new Refused('newer-schema', { found, known: migrations.length });
  if (found === migrations.length) return;
  if (found > 0) await parts.backup(`before-${migrations[found]?.name ?? 'schema'}`);
  for (let version = found + 1; version <= migrations.length; version++) await step(parts, migrations, version);
}

/** Refuses to go on in a writing transaction where a newer program has changed the schema since this one opened the lab. */
export async function refuseNewer(tx: Tx): Promise<void> {
  const found = await lastVersion(tx);
  if (found > MIGRATIONS.length) throw new Refused('newer-schema', { found, known: MIGRATIONS.length });
}

async function lastVersion(db: Kysely<Schema>): Promise<number> {
  const { rows } = await db.executeQuery(NEWEST);
  return rows[0]?.version ?? 0;
}

/** Names of the tables that are there, whatever their schema is. */
export async function tableNames(db: Kysely<Schema>, engine: Engine): Promise<Set<string>> {
  const known =
    engine === 'sqlite'
      ? sql<{ name: string }>`select name from sqlite_master where type = 'table'`
      : sql<{ name: string }>`select tablename as name from pg_tables where schemaname = current_schema()`;
  const { rows } = await known.execute(db);
  return new Set(rows.map(({ name }) => name));
}

/** Number of the last migration that the database has seen; 0 for an empty one. */
export async function schemaVersion(db: Kysely<Schema>, engine: Engine): Promise<number> {
  return (await tableNames(db, engine)).has('schema_version') ? lastVersion(db) : 0;
}

async function step(parts: EngineParts, migrations: readonly Migration[], version: number): Promise<void> {
  await writing(parts, async (tx) => {
    if (parts.engine === 'postgres') await sql`select pg_advisory_xact_lock(60, 62)`.execute(tx);
    await sql`create table if not exists schema_version (version integer primary key, name text not null unique)`.execute(tx);
    if ((await schemaVersion(tx, parts.engine)) >= version) return; // another process was quicker
    const migration = migrations[version - 1];
    if (!migration) throw new Error(`no migration ${version}`);
    for (const statement of migration.statements(parts.engine)) await sql.raw(statement).execute(tx);
    await sql`insert into schema_version (version, name) values (${version}, ${migration.name})`.execute(tx);
  });
}
