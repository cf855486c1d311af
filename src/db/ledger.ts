import type { Move } from '#core/stock/moves.ts';
import { builtOnce } from './built-once.ts';
import type { Tx } from './engine.ts';
import { chunks } from './rows.ts';

/** One effect of an act on a bag. */
export interface NewMovement extends Move {
  readonly bag: string;
  readonly lot?: string | null;
  /** the last seq that a count knew */
  readonly saw?: number | null;
  readonly buildLine?: string | null;
}

export interface PostedMovement extends Required<NewMovement> {
  readonly seq: number;
  readonly act: string;
}

/** What else an act changes on a bag. */
export interface NewBagChange {
  readonly bag: string;
  readonly field: 'state' | 'to_count' | 'live';
  readonly before: string;
  readonly after: string;
}

const newestSeq = builtOnce<Record<string, never>, { seq: number | null }>((tx) =>
  tx.selectFrom('movement').select((eb) => eb.fn.max<number | null>('seq').as('seq')),
);

type MovementRow = { [K in 'seq' | 'delta' | 'sure_delta']: number } & { [K in 'act' | 'bag']: string } & {
  [K in 'lot' | 'build_line']: string | null;
} & { saw: number | null };

const insertMovement = builtOnce<MovementRow, unknown>((tx, put) =>
  tx.insertInto('movement').values({
    seq: put('seq'),
    act: put('act'),
    bag: put('bag'),
    lot: put('lot'),
    delta: put('delta'),
    sure_delta: put('sure_delta'),
    saw: put('saw'),
    build_line: put('build_line'),
  }),
);

const moveBags = builtOnce<{ before: number; change: number }, unknown>((tx, put) =>
  tx
    .updateTable('bag')
    .from((db) =>
      db
        .selectFrom('movement')
        .select((eb) => [
          'bag as of_bag',
          eb.fn.sum<number>('delta').as('delta'),
          eb.fn.sum<number>('sure_delta').as('sure_delta'),
        ])
        .where('seq', '>', put('before'))
        .groupBy('bag')
        .as('moved'),
    )
    .set((eb) => ({
      on_hand: eb('bag.on_hand', '+', eb.ref('moved.delta')),
      sure: eb('bag.sure', '+', eb.ref('moved.sure_delta')),
      changed: put('change'),
    }))
    .whereRef('moved.of_bag', '=', 'bag.id'),
);

/** The last seq that was given; 0 in a new lab. */
export async function lastSeq(tx: Tx): Promise<number> {
  const [row] = await newestSeq(tx, {});
  return row?.seq ?? 0;
}

/**
 * Enters movements in their order and moves on hand and sure with them: the only writer of either.
 * The caller has looked that no bag goes below zero; the table's CHECK makes a mistake of ours a failure, not a wrong stock.
 */
export async function postMovements(tx: Tx, act: string, change: number, movements: readonly NewMovement[]): Promise<void> {
  if (movements.length === 0) return;
  const before = await lastSeq(tx);
  const rows = movements.map((movement, at) => ({
    seq: before + at + 1,
    act,
    bag: movement.bag,
    lot: movement.lot ?? null,
    delta: movement.delta,
    sure_delta: movement.sureDelta,
    saw: movement.saw ?? null,
    build_line: movement.buildLine ?? null,
  }));
  const [alone] = rows;
  if (alone && rows.length === 1) await insertMovement(tx, alone);
  else for (const some of chunks(rows)) await tx.insertInto('movement').values(some).execute();
  await moveBags(tx, { before, change });
  await refreshOldest(tx, [...new Set(movements.filter((movement) => movement.lot).map((movement) => movement.bag))]);
}

/** The oldest lot of which a bag still has received more than was taken back. */
async function refreshOldest(tx: Tx, bags: readonly string[]): Promise<void> {
  for (const some of chunks(bags)) {
    await tx
      .updateTable('bag')
      .set((eb) => ({
        oldest: eb
          .selectFrom((db) =>
            db
              .selectFrom('movement')
              .innerJoin('lot', 'lot.id', 'movement.lot')
              .select('lot.received')
              .whereRef('movement.bag', '=', 'bag.id')
              .groupBy(['lot.id', 'lot.received'])
              .having((having) => having.fn.sum('movement.delta'), '>', 0)
              .as('held'),
          )
          .select((oldest) => oldest.fn.min('held.received').as('received')),
      }))
      .where('id', 'in', some)
      .execute();
  }
}

/** Enters and applies changes of a bag's state, its place on the count list, or its life, in their order. */
export async function postBagChanges(tx: Tx, act: string, change: number, changes: readonly NewBagChange[]): Promise<void> {
  const real = changes.filter((one) => one.before !== one.after);
  const known = await tx
    .selectFrom('bag_change')
    .select((eb) => eb.fn.max('ord').as('ord'))
    .where('act', '=', act)
    .executeTakeFirst();
  const first = (known?.ord ?? -1) + 1;
  for (const some of chunks(real.map((one, at) => ({ act, ord: first + at, ...one })))) {
    await tx.insertInto('bag_change').values(some).execute();
  }
  const last = new Map(real.map((one) => [`${one.field} ${one.bag}`, one]));
  const groups = Map.groupBy(last.values(), (one) => `${one.field}=${one.after}`);
  for (const group of groups.values()) {
    const [{ field, after } = { field: 'state', after: 'sound' }] = group;
    const value = field === 'state' ? { state: after } : field === 'live' ? { live: flag(after) } : { to_count: flag(after) };
    for (const some of chunks(group)) {
      await tx
        .updateTable('bag')
        .set({ ...value, changed: change })
        .where(
          'id',
          'in',
          some.map((one) => one.bag),
        )
        .execute();
    }
  }
}

function flag(text: string): 0 | 1 {
  return text === '1' ? 1 : 0;
}

/** Movements of an act, in their order. */
export async function movementsOf(tx: Tx, act: string): Promise<PostedMovement[]> {
  const rows = await tx.selectFrom('movement').selectAll().where('act', '=', act).orderBy('seq').execute();
  return rows.map((row) => ({
    seq: row.seq,
    act: row.act,
    bag: row.bag,
    lot: row.lot,
    delta: row.delta,
    sureDelta: row.sure_delta,
    saw: row.saw,
    buildLine: row.build_line,
  }));
}

export async function bagChangesOf(tx: Tx, act: string): Promise<NewBagChange[]> {
  return tx.selectFrom('bag_change').select(['bag', 'field', 'before', 'after']).where('act', '=', act).orderBy('ord').execute();
}

/** A movement that came after another on the same bag, as a refusal names it. */
export interface LaterMovement {
  readonly seq: number;
  readonly act: string;
  readonly kind: string;
  readonly delta: number;
}

/** Movements of the bag after a seq, without acts that were undone and without their undoing. */
export async function movementsAfter(tx: Tx, bag: string, seq: number): Promise<LaterMovement[]> {
  return tx
    .selectFrom('movement')
    .innerJoin('act', 'act.id', 'movement.act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .select(['movement.seq', 'movement.act', 'act.kind', 'movement.delta'])
    .where('movement.bag', '=', bag)
    .where('movement.seq', '>', seq)
    .where('act.undoes', 'is', null)
    .where('later.id', 'is', null)
    .orderBy('movement.seq')
    .execute();
}

/** The results of the counts of a bag that somebody made after a seq, without those that were undone. */
export async function countsAfter(tx: Tx, bag: string, seq: number, who: string): Promise<unknown[]> {
  const rows = await tx
    .selectFrom('movement')
    .innerJoin('act', 'act.id', 'movement.act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .select('act.result')
    .where('movement.bag', '=', bag)
    .where('movement.seq', '>', seq)
    .where('act.kind', '=', 'counted')
    .where('act.who', '=', who)
    .where('later.id', 'is', null)
    .execute();
  return rows.map(({ result }): unknown => JSON.parse(result));
}

/** What the bag held by its movements up to a seq. */
export async function balanceAt(tx: Tx, bag: string, seq: number): Promise<number> {
  const row = await tx
    .selectFrom('movement')
    .select((eb) => eb.fn.sum<number | null>('delta').as('total'))
    .where('bag', '=', bag)
    .where('seq', '<=', seq)
    .executeTakeFirst();
  return row?.total ?? 0;
}
