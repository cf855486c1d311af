import { randomUUID } from 'node:crypto';
import type { Fact, Facts } from '#core/part/part.ts';
import type { Tx } from './engine.ts';
import { chunks, grouped } from './rows.ts';

/** A part to be found or entered: `key` is its facts in one canonical spelling. */
export interface NewPart {
  readonly key: string;
  readonly code: string;
  readonly kind: string;
  readonly text: string;
  readonly facts: readonly Fact[];
}

/** Ids of the parts by key; those that are not there yet are entered. */
export async function ensureParts(tx: Tx, parts: readonly NewPart[]): Promise<Map<string, string>> {
  const wanted = new Map(parts.map((part) => [part.key, part]));
  const ids = await partIds(tx, [...wanted.keys()]);
  const fresh = [...wanted.values()].filter((part) => !ids.has(part.key)).map((part) => ({ ...part, id: randomUUID() }));
  for (const some of chunks(fresh)) {
    await tx
      .insertInto('part')
      .values(some.map(({ id, key, code, kind, text }) => ({ id, key, code, kind, text })))
      .execute();
  }
  for (const some of chunks(fresh.flatMap(({ id, facts }) => facts.map((fact) => ({ part: id, ...fact }))))) {
    await tx.insertInto('part_fact').values(some).execute();
  }
  for (const { key, id } of fresh) ids.set(key, id);
  return ids;
}

/** Ids of the parts that are there, by key. */
export async function partIds(tx: Tx, keys: readonly string[]): Promise<Map<string, string>> {
  const ids = new Map<string, string>();
  for (const some of chunks(keys)) {
    const rows = await tx.selectFrom('part').select(['id', 'key']).where('key', 'in', some).execute();
    for (const row of rows) ids.set(row.key, row.id);
  }
  return ids;
}

/** Facts of parts by part id; of all parts where none are named. */
export async function readFacts(tx: Tx, parts: readonly string[] | null): Promise<Map<string, Facts>> {
  const query = tx.selectFrom('part_fact').selectAll();
  const rows = parts === null ? await query.execute() : [];
  for (const some of parts === null ? [] : chunks(parts)) rows.push(...(await query.where('part', 'in', some).execute()));
  const facts = new Map<string, Facts>();
  for (const [part, own] of grouped(rows, (row) => row.part)) {
    const entries = own.map(({ key, value, unit, origin }) => [key, { key, value, unit, origin }] as const);
    facts.set(part, Object.fromEntries(entries) as Facts); // as: only facts of a `Part` are ever entered
  }
  return facts;
}
