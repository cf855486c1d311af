import { sql } from 'kysely';
import type { Engine, Tx } from './engine.ts';
import { knownSchema } from './migration.ts';
import { Refused } from './refused.ts';
import { chunks } from './rows.ts';
import type { Schema } from './schema.ts';

/** Tables in the order in which they may be filled: what is pointed at comes first; rows in an order that both engines give. */
const TABLES = {
  act: ['change'],
  part: ['id'],
  part_fact: ['part', 'key'],
  box: ['name'],
  lot: ['id'],
  bag: ['id'],
  movement: ['seq'],
  bag_change: ['act', 'ord'],
  board: ['id'],
  revision: ['id'],
  line: ['id'],
  choice: ['board', 'demand'],
  build: ['id'],
  build_line: ['id'],
  reservation: ['build_line', 'bag'],
  kit_take: ['id'],
} as const satisfies { readonly [Table in Exclude<keyof Schema, 'change'>]: readonly string[] };

type Table = keyof typeof TABLES;
const NAMES = Object.keys(TABLES) as Table[]; // as: the keys of the record above
const ROWS_A_PAGE = 5000;

interface Head {
  readonly bagatelle: 'dump';
  readonly schema: number;
  readonly change: number;
}

/**
 * The whole lab as JSON Lines, the same from either engine: a head, then `["bag", {…}]` for each row. Read it inside one
 * `lab.read`, so that it is one moment.
 */
export async function* dumpLab(tx: Tx, engine: Engine): AsyncGenerator<string> {
  const { number } = await tx.selectFrom('change').select('number').executeTakeFirstOrThrow();
  const head: Head = { bagatelle: 'dump', schema: knownSchema(), change: number };
  yield JSON.stringify(head);
  for (const table of NAMES) {
    for (let offset = 0; ; offset += ROWS_A_PAGE) {
      const order = sql.join(TABLES[table].map((column) => ordered(column, engine)));
      const { rows } =
        await sql<object>`select * from ${sql.table(table)} order by ${order} limit ${ROWS_A_PAGE} offset ${offset}`.execute(tx);
      for (const row of rows) yield JSON.stringify([table, sorted(row)]);
      if (rows.length < ROWS_A_PAGE) break;
    }
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
 * Fills an empty lab from a dump, in the caller's transaction; the last change number is that of the dump. Refused where the lab
 * holds something (`not-empty`), the dump is of a newer schema (`newer-schema`), or a line can't be read (`not-valid`).
 */
export async function restoreLab(tx: Tx, lines: AsyncIterable<string> | Iterable<string>): Promise<void> {
  if (await tx.selectFrom('act').select('id').limit(1).executeTakeFirst()) throw new Refused('not-empty');
  let head: Head | null = null;
  let waiting: { table: Table; rows: object[] } | null = null;
  let at = 0;
  for await (const line of lines) {
    at++;
    if (line.trim() === '') continue;
    if (!head) {
      head = readHead(line, at);
      continue;
    }
    const { table, row } = readRow(line, at);
    if (waiting && (waiting.table !== table || waiting.rows.length >= ROWS_A_PAGE)) {
      await fill(tx, waiting.table, waiting.rows);
      waiting = null;
    }
    waiting ??= { table, rows: [] };
    waiting.rows.push(row);
  }
  if (!head) throw unreadable(1, '');
  if (waiting) await fill(tx, waiting.table, waiting.rows);
  await tx.updateTable('change').set({ number: head.change }).where('id', '=', 1).execute();
}

async function fill(tx: Tx, table: Table, rows: readonly object[]): Promise<void> {
  for (const some of chunks(rows)) {
    try {
      // the dump was written from this table's rows; what does not fit is refused by the table itself
      await tx.insertInto(table).values(some).execute();
    } catch (error) {
      throw new Refused('not-valid', {
        field: table,
        received: error instanceof Error ? error.message : String(error),
        expected: 'dump',
      });
    }
  }
}

function readHead(line: string, at: number): Head {
  const head = parsed(line, at) as Partial<Head> | null; // as: each field is looked at below
  if (head?.bagatelle !== 'dump' || !Number.isSafeInteger(head.schema) || !Number.isSafeInteger(head.change))
    throw unreadable(at, line);
  const { schema = 0, change = 0 } = head;
  if (schema > knownSchema()) throw new Refused('newer-schema', { found: schema, known: knownSchema() });
  return { bagatelle: 'dump', schema, change };
}

function readRow(line: string, at: number): { table: Table; row: object } {
  const value = parsed(line, at);
  if (!Array.isArray(value) || value.length !== 2) throw unreadable(at, line);
  const [name, row]: unknown[] = value;
  const table = NAMES.find((known) => known === name);
  if (!table || typeof row !== 'object' || row === null) throw unreadable(at, line);
  return { table, row };
}

function parsed(line: string, at: number): unknown {
  try {
    return JSON.parse(line);
  } catch {
    throw unreadable(at, line);
  }
}

function unreadable(at: number, line: string): Refused {
  return new Refused('not-valid', { field: `line ${at}`, received: line.slice(0, 60), expected: 'dump' });
}
