import { sql, type RawBuilder } from 'kysely';
import { backupBad } from './backup-bad.ts';
import { readChange } from './change.ts';
import { diskTrouble } from './disk-trouble.ts';
import { sealer } from './dump-seal.ts';
import type { Engine, Tx } from './engine.ts';
import { knownSchema, schemaVersion, tableNames } from './migration.ts';
import { Refused } from './refused.ts';
import { chunks } from './rows.ts';
import type { Schema } from './schema.ts';
import { writeBegun } from './setting.ts';

/**
 * Tables in the order in which they may be filled, what is pointed at first; rows by their key, in an order that both engines
 * give. Devices, settings and drafts, kept ones too, belong to the place, not to the stock, and stay out.
 */
const TABLES = {
  act: ['change'],
  part: ['id'],
  part_fact: ['part', 'key'],
  box: ['name'],
  lot: ['id'],
  bag: ['id'],
  board: ['id'],
  revision: ['id'],
  line: ['id'],
  choice: ['board', 'demand'],
  later: ['board', 'demand'],
  build: ['id'],
  build_line: ['id'],
  movement: ['seq'],
  bag_change: ['act', 'ord'],
  reservation: ['build_line', 'bag'],
  kit_take: ['id'],
} as const satisfies {
  readonly [Table in Exclude<keyof Schema, 'change' | 'device' | 'setting' | 'draft' | 'kept_draft'>]: readonly string[];
};

type Table = keyof typeof TABLES;
/** Names of the tables that hold the stock, what is pointed at first. */
export const NAMES = Object.keys(TABLES) as Table[]; // as: the keys of the record above
const ROWS_A_PAGE = 5000;

interface Head {
  readonly bagatelle: 'dump';
  readonly schema: number;
  readonly change: number;
}

/**
 * The whole lab as JSON Lines, the same from either engine: a head, then `["bag", {…}]` for each row, then an end line that
 * proves the others (`sealer`). Read it inside one `lab.read`, so that it is one moment. A lab whose schema is still an older one is written as it is.
 */
export async function* dumpLab(tx: Tx, engine: Engine): AsyncGenerator<string> {
  const { number } = await tx.selectFrom('change').select('number').executeTakeFirstOrThrow();
  const head: Head = { bagatelle: 'dump', schema: await schemaVersion(tx, engine), change: number };
  const seal = sealer(NAMES);
  const told = (line: string, table: Table | null = null): string => {
    seal.add(line, table);
    return line;
  };
  yield told(JSON.stringify(head));
  const there = await tableNames(tx, engine);
  for (const table of NAMES) {
    if (there.has(table))
      for await (const row of rowsOf(tx, engine, table)) yield told(JSON.stringify([table, sorted(row)]), table);
  }
  yield seal.line();
}

type Row = Readonly<Record<string, string | number | null>>;

/** Page by page; each goes on after the key of the last row of the one before. */
async function* rowsOf(tx: Tx, engine: Engine, table: Table): AsyncGenerator<Row> {
  const columns: readonly string[] = TABLES[table];
  const key = sql.join(columns.map((column) => ordered(column, engine)));
  for (let last: Row | null = null; ;) {
    const before: Row | null = last;
    const after: RawBuilder<unknown> = before
      ? sql`where (${key}) > (${sql.join(columns.map((column) => before[column]))})`
      : sql``;
    const { rows } = await sql<Row>`select * from ${sql.table(table)} ${after} order by ${key} limit ${ROWS_A_PAGE}`.execute(tx);
    yield* rows;
    last = rows.at(-1) ?? null;
    if (rows.length < ROWS_A_PAGE) return;
  }
}

const NUMERIC: ReadonlySet<string> = new Set(['change', 'seq', 'ord']);

/** Text by its code units in both engines, whatever language the server speaks. */
function ordered(column: string, engine: Engine) {
  const name = sql.ref(column);
  return engine === 'postgres' && !NUMERIC.has(column) ? sql`${name} collate "C"` : name;
}

function sorted(row: object): object {
  return Object.fromEntries(Object.entries(row).toSorted(([a], [b]) => (a < b ? -1 : 1)));
}

/**
 * Fills an empty lab from a dump, in the caller's transaction. The last change number is that of the dump, or a later one where
 * the lab had come further before it was cleared: it never goes back. Refused where the lab holds something (`not-empty`), the
 * dump is of a newer schema (`newer-schema`), or it is not whole and unchanged (`backup-bad`).
 */
export async function restoreLab(tx: Tx, lines: AsyncIterable<string> | Iterable<string>): Promise<void> {
  if (await tx.selectFrom('act').select('id').limit(1).executeTakeFirst()) throw new Refused('not-empty');
  const seal = sealer(NAMES);
  let head: Head | null = null;
  let sealed = false;
  let waiting: { table: Table; rows: object[] } | null = null;
  let at = 0;
  for await (const line of lines) {
    at++;
    if (line.trim() === '') continue;
    if (sealed) throw backupBad('goes-on', { line: at });
    if (!head) {
      head = readHead(line);
      seal.add(line, null);
      continue;
    }
    const read = readLine(line, at);
    if (read.table === 'end') {
      seal.check(read.row);
      sealed = true;
      continue;
    }
    seal.add(line, read.table);
    if (waiting && (waiting.table !== read.table || waiting.rows.length >= ROWS_A_PAGE)) {
      await fill(tx, waiting.table, waiting.rows);
      waiting = null;
    }
    waiting ??= { table: read.table, rows: [] };
    waiting.rows.push(read.row);
  }
  if (!head) throw backupBad('head', { text: '' });
  if (!sealed) throw backupBad('cut-short', { line: at });
  if (waiting) await fill(tx, waiting.table, waiting.rows);
  const before = await readChange(tx);
  const change = Math.max(head.change, before === 0 ? 0 : before + 1);
  await tx.updateTable('change').set({ number: change }).where('id', '=', 1).execute();
  await writeBegun(tx, change);
}

async function fill(tx: Tx, table: Table, rows: readonly object[]): Promise<void> {
  for (const some of chunks(rows)) {
    try {
      // the dump was written from this table's rows; what does not fit is refused by the table itself
      await tx.insertInto(table).values(some).execute();
    } catch (error) {
      const trouble = diskTrouble(error);
      throw trouble instanceof Refused ? trouble : backupBad('row', { table });
    }
  }
}

/** More changes than any lab can make: one a millisecond for thirty years. */
const MOST_CHANGES = 1e12;

function readHead(line: string): Head {
  const head = parsed(line) as Partial<Head> | null | undefined; // as: each field is looked at below
  const { bagatelle, schema = 0, change = -1 } = head ?? {};
  const sound =
    Number.isSafeInteger(schema) && schema >= 1 && Number.isSafeInteger(change) && change >= 0 && change <= MOST_CHANGES;
  if (bagatelle !== 'dump' || !sound) throw backupBad('head', { text: line.slice(0, 60) });
  if (schema > knownSchema()) throw new Refused('newer-schema', { found: schema, known: knownSchema() });
  return { bagatelle: 'dump', schema, change };
}

function readLine(line: string, at: number): { table: Table | 'end'; row: object } {
  const value = parsed(line);
  const [name, row]: unknown[] = Array.isArray(value) && value.length === 2 ? value : [];
  const table = name === 'end' ? name : NAMES.find((known) => known === name);
  if (!table || typeof row !== 'object' || row === null) throw backupBad('line', { line: at, text: line.slice(0, 60) });
  if (table !== 'end' && Object.values(row).some((cell) => typeof cell === 'number' && !Number.isSafeInteger(cell)))
    throw backupBad('number', { line: at });
  return { table, row };
}

/** undefined where the text is no JSON */
function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}
