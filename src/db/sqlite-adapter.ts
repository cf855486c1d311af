import type { DatabaseSync, SQLInputValue, StatementSync } from 'node:sqlite';
import type { SqliteDatabase, SqliteStatement } from 'kysely';

const KEPT_STATEMENTS = 300;

/**
 * node:sqlite as Kysely's SqliteDialect wants it: parameters as an array, plain rows, statements kept prepared.
 * `begin` is what a transaction starts with: `begin immediate` where it will write; `end` is how it ends: one that only reads
 * needs no commit, which a damaged file refuses.
 */
export function adaptSqlite(db: DatabaseSync, begin: string, end = 'commit'): SqliteDatabase {
  const kept = new Map<string, SqliteStatement>();
  return {
    close: () => db.close(),
    prepare(text) {
      const known = kept.get(text);
      if (known) return known;
      if (kept.size >= KEPT_STATEMENTS) kept.clear();
      const said = text === 'begin' ? begin : text === 'commit' ? end : text;
      const statement = adaptStatement(db.prepare(said), said === 'rollback' ? () => db.isTransaction : undefined);
      kept.set(text, statement);
      return statement;
    },
  };
}

/** SQLite itself rolls back when the disk is full or fails: then there is nothing left to do, and the first error is the one to tell. */
function adaptStatement(statement: StatementSync, needed: () => boolean = () => true): SqliteStatement {
  const reader = statement.columns().length > 0;
  return {
    reader,
    all: (parameters) => statement.all(...inputs(parameters)).map(plainRow),
    run: (parameters) => (needed() ? statement.run(...inputs(parameters)) : { changes: 0, lastInsertRowid: 0 }),
    *iterate(parameters) {
      for (const row of statement.iterate(...inputs(parameters))) yield plainRow(row);
    },
  };
}

/** Rows of node:sqlite have no prototype, which a deep comparison takes for a difference. */
function plainRow(row: object): object {
  return { ...row };
}

function inputs(parameters: readonly unknown[]): SQLInputValue[] {
  return parameters.map((value) => {
    if (value === null || typeof value === 'string' || typeof value === 'number' || typeof value === 'bigint') return value;
    if (value instanceof Uint8Array) return value;
    throw new Error(`a query parameter must be text, a number, bytes or null, not ${typeof value}`);
  });
}
