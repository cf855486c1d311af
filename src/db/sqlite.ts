import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { backup, DatabaseSync } from 'node:sqlite';
import { Kysely, SqliteDialect } from 'kysely';
import type { EngineParts } from './engine.ts';
import type { Schema } from './schema.ts';
import { adaptSqlite } from './sqlite-adapter.ts';

const FILE = 'bagatelle.sqlite';
const POLL_MS = 200;
/** short, since waiting here blocks the event loop; `writing` waits longer without blocking */
const BUSY_MS = 50;
/** several processes may open a new lab at once */
const OPENING_MS = 5000;
const SQLITE_BUSY = 5;

/** The lab in a folder: one connection writes, one reads, one watches for what other processes commit. */
export function openSqlite(home: string): EngineParts {
  mkdirSync(home, { recursive: true });
  const file = join(home, FILE);
  const write = connect(file);
  const writer = kyselyOn(write, 'begin immediate');
  const reader = kyselyOn(connect(file, 'query_only'), 'begin', 'rollback');
  return {
    engine: 'sqlite',
    where: home,
    writer,
    lock: () => Promise.resolve(),
    read: (fn) => reader.transaction().execute(fn),
    isBusy: (error) => error instanceof Error && 'errcode' in error && (Number(error.errcode) & 0xff) === SQLITE_BUSY,
    listen: (onMaybe) => poll(file, onMaybe),
    announce: null,
    backup: (label) => backupInto(write, home, label),
    async close() {
      await writer.destroy();
      await reader.destroy();
    },
  };
}

function connect(file: string, only?: 'query_only'): DatabaseSync {
  const db = new DatabaseSync(file, { timeout: OPENING_MS, enableForeignKeyConstraints: true });
  db.exec(only ? 'pragma query_only = on' : 'pragma journal_mode = wal; pragma synchronous = full');
  db.exec(`pragma busy_timeout = ${BUSY_MS}`);
  return db;
}

function kyselyOn(db: DatabaseSync, begin: string, end?: string): Kysely<Schema> {
  return new Kysely<Schema>({ dialect: new SqliteDialect({ database: adaptSqlite(db, begin, end) }) });
}

/** `data_version` of a connection that never writes moves whenever another connection, of any process, commits. */
function poll(file: string, onMaybe: () => void): () => void {
  const db = connect(file, 'query_only');
  const statement = db.prepare('pragma data_version');
  const version = (): unknown => statement.get()?.['data_version'];
  let seen = version();
  const timer = setInterval(() => {
    const now = version();
    if (now === seen) return;
    seen = now;
    onMaybe();
  }, POLL_MS);
  timer.unref();
  return () => {
    clearInterval(timer);
    db.close();
  };
}

/** `backups/<label>-<UTC time>.sqlite` beside the lab, a consistent copy. */
async function backupInto(db: DatabaseSync, home: string, label: string): Promise<void> {
  const folder = join(home, 'backups');
  mkdirSync(folder, { recursive: true });
  const stamp = new Date().toISOString().replaceAll(/[:.]/g, '-');
  await backup(db, join(folder, `${label}-${stamp}.sqlite`));
}
