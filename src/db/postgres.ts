import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { Kysely, PostgresDialect, sql } from 'kysely';
import { Client, Pool, TypeOverrides } from 'pg';
import type { EngineParts, Tx } from './engine.ts';
import { Refused } from './refused.ts';
import type { Schema } from './schema.ts';
import { writeDump } from './write-dump.ts';

const CHANNEL = 'bagatelle_change';
const RETRY_MS = 1000;
const PATIENCE = '10s';
const LOCK_NOT_AVAILABLE = '55P03';
const INT8 = 20;
const NUMERIC = 1700;

/** int8 and sums of it as numbers; beyond 2^53 is our own bug, since stock is counted in whole pieces. */
const types = new TypeOverrides();
for (const type of [INT8, NUMERIC]) types.setTypeParser(type, wholeNumber);

function wholeNumber(text: string): number {
  const value = Number(text);
  if (!Number.isSafeInteger(value)) throw new Error(`${text} is no whole number that can be kept exactly`);
  return value;
}

/** The lab in a PostgreSQL: writers take turns on the one row of `change`, readers see one snapshot. */
export function openPostgres(url: string, backups: string): EngineParts {
  const pool = new Pool({ connectionString: url, types, max: 6 });
  // an idle connection broke: the next query makes a new one, but whoever runs the lab should know
  pool.on('error', (error) => process.emitWarning(error));
  const db = new Kysely<Schema>({ dialect: new PostgresDialect({ pool }) });
  const read: EngineParts['read'] = (fn) =>
    db.transaction().setIsolationLevel('repeatable read').setAccessMode('read only').execute(fn);
  return {
    engine: 'postgres',
    where: withoutPassword(url),
    writer: db,
    lock: takeTurn,
    read,
    isBusy: () => false,
    listen: (onMaybe) => listen(url, onMaybe),
    async announce(tx, change) {
      await sql`select pg_notify(${CHANNEL}, ${String(change)})`.execute(tx);
    },
    backup: (label) => backupInto(read, backups, label),
    close: () => db.destroy(),
  };
}

/** Writers take turns on the one row of `change`; who waits too long is told so. */
async function takeTurn(tx: Tx): Promise<void> {
  await sql`set local lock_timeout = ${sql.lit(PATIENCE)}`.execute(tx);
  try {
    await sql`select number from change where id = 1 for update`.execute(tx);
  } catch (error) {
    throw error instanceof Error && 'code' in error && error.code === LOCK_NOT_AVAILABLE ? new Refused('busy') : error;
  }
}

/** Hears NOTIFY on a connection of its own; after a break it connects again and asks once, since it may have missed some. */
function listen(url: string, onMaybe: () => void): () => void {
  let stopped = false;
  let client: Client | null = null;
  let timer: NodeJS.Timeout | null = null;
  const again = (): void => {
    if (stopped || timer) return;
    timer = setTimeout(() => {
      timer = null;
      void connect();
    }, RETRY_MS);
    timer.unref();
  };
  const connect = async (): Promise<void> => {
    const mine = new Client({ connectionString: url });
    client = mine;
    mine.on('notification', onMaybe);
    mine.on('error', again);
    mine.on('end', again);
    try {
      await mine.connect();
      await mine.query(`listen ${CHANNEL}`);
      onMaybe();
    } catch {
      again();
    }
    if (stopped) await mine.end();
  };
  void connect();
  return () => {
    stopped = true;
    if (timer) clearTimeout(timer);
    void client?.end();
  };
}

/** A dump as `backup` writes it and `restore` reads it, of one moment, before the schema changes. */
async function backupInto(read: EngineParts['read'], folder: string, label: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const stamp = new Date().toISOString().replaceAll(/[:.]/g, '-');
  await read((tx) => writeDump(tx, 'postgres', join(folder, `${label}-${stamp}.jsonl`)));
}

function withoutPassword(url: string): string {
  return url.replace(/^([a-z]+:\/\/[^:@/]+):[^@/]*@/, '$1@');
}
