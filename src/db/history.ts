import { actNames } from './act-names.ts';
import type { Tx } from './engine.ts';
import { grouped } from './rows.ts';

/** One movement of a bag, for reading. */
export interface BagEntry {
  readonly act: string;
  readonly seq: number;
  readonly kind: string;
  readonly delta: number;
  /** after it */
  readonly onHand: number;
  readonly who: string;
  readonly happenedAt: string;
  readonly recordedAt: string;
  readonly undoes: string | null;
  readonly undoneBy: string | null;
  /** the build, the supplier or the list that it was for */
  readonly for: string | null;
  readonly note: string | null;
}

/** All movements of the live bag of that number, the first one first. */
export async function readBagHistory(tx: Tx, number: number): Promise<BagEntry[]> {
  const rows = await tx
    .selectFrom('movement')
    .innerJoin('bag', 'bag.id', 'movement.bag')
    .innerJoin('act', 'act.id', 'movement.act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .leftJoin('lot', 'lot.id', 'movement.lot')
    .leftJoin('build_line', 'build_line.id', 'movement.build_line')
    .leftJoin('build', 'build.id', 'build_line.build')
    .select((eb) => [
      'act.id as act',
      'movement.seq',
      'act.kind',
      'movement.delta',
      eb.fn
        .sum<number>('movement.delta')
        .over((over) => over.orderBy('movement.seq'))
        .as('onHand'),
      'act.who',
      'act.happened_at as happenedAt',
      'act.recorded_at as recordedAt',
      'act.undoes',
      'later.id as undoneBy',
      'act.note',
      'lot.supplier',
      'build.name as build',
    ])
    .where('bag.number', '=', number)
    .where('bag.live', '=', 1)
    .orderBy('movement.seq')
    .execute();
  // the note of an imported list is its name
  return rows.map(({ supplier, build, ...row }) => ({
    ...row,
    for: build ?? supplier ?? (row.kind === 'imported' && row.undoes === null ? row.note : null),
  }));
}

/** One act, for reading: what a person did, and what became of it. */
export interface ActEntry {
  readonly act: string;
  readonly kind: string;
  readonly who: string;
  readonly happenedAt: string;
  readonly change: number;
  readonly undoes: string | null;
  readonly undoneBy: string | null;
  readonly note: string | null;
  readonly movements: number;
  /** what it changed on hand, all bags together */
  readonly pieces: number;
  /** board or build that it was for */
  readonly for: string | null;
  /** numbers of its bags: the first few */
  readonly bags: readonly number[];
  /** further bags that it moved */
  readonly more: number;
}

const SOME_BAGS = 8;

/** The newest acts, newest first; `before` goes on from the change number of the last one that was shown. */
export async function readActs(
  tx: Tx,
  { limit, before }: { readonly limit: number; readonly before?: number },
): Promise<ActEntry[]> {
  const newest = tx
    .selectFrom('act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .leftJoin('act as earlier', 'earlier.id', 'act.undoes')
    .select(['act.id', 'act.kind', 'act.who', 'act.happened_at', 'act.change', 'act.undoes', 'act.note', 'later.id as undone_by'])
    .select(['act.memo', 'earlier.memo as earlier_memo'])
    .select((eb) =>
      eb
        .selectFrom('movement')
        .select((of) => of.fn.countAll<number>().as('movements'))
        .whereRef('movement.act', '=', 'act.id')
        .as('movements'),
    )
    .select((eb) =>
      eb
        .selectFrom('movement')
        .select((of) => of.fn.sum<number>('movement.delta').as('pieces'))
        .whereRef('movement.act', '=', 'act.id')
        .as('pieces'),
    )
    .select((eb) =>
      eb
        .selectFrom('movement')
        .innerJoin('bag', 'bag.id', 'movement.bag')
        .select((of) => of.fn.count<number>('bag.number').distinct().as('moved'))
        .whereRef('movement.act', '=', 'act.id')
        .as('moved'),
    )
    .orderBy('act.change', 'desc')
    .limit(limit);
  const rows = await (before === undefined ? newest : newest.where('act.change', '<', before)).execute();
  const bags = await someBags(
    tx,
    rows.map((row) => row.id),
  );
  const names = await actNames(
    tx,
    rows.map(({ id, undoes, memo, earlier_memo }) => ({ id: undoes ?? id, memo: earlier_memo ?? memo })),
  );
  return rows.map(({ id, happened_at, undone_by, movements, moved, pieces, memo: _memo, earlier_memo: _earlier, ...row }) => {
    const named = (bags.get(id) ?? []).map(({ number }) => number);
    return {
      act: id,
      happenedAt: happened_at,
      undoneBy: undone_by,
      movements: movements ?? 0,
      pieces: pieces ?? 0,
      for: names.get(row.undoes ?? id) ?? null,
      bags: named,
      more: (moved ?? 0) - named.length,
      ...row,
    };
  });
}

/** Numbers of the first few bags of each act. */
async function someBags(tx: Tx, acts: readonly string[]): Promise<Map<string, { number: number }[]>> {
  if (acts.length === 0) return new Map();
  const rows = await tx
    .selectFrom((db) =>
      db
        .selectFrom('movement')
        .innerJoin('bag', 'bag.id', 'movement.bag')
        .select(['movement.act', 'bag.number'])
        .select((eb) =>
          eb.fn
            .agg<number>('dense_rank')
            .over((over) => over.partitionBy('movement.act').orderBy('bag.number'))
            .as('place'),
        )
        .distinct()
        .where('movement.act', 'in', acts)
        .as('of_act'),
    )
    .select(['act', 'number'])
    .where('place', '<=', SOME_BAGS)
    .orderBy('act')
    .orderBy('number')
    .execute();
  return grouped(rows, (row) => row.act);
}

const ACT_START = /^[0-9a-f-]{4,36}$/i;

/** Ids of the acts that begin so, two at most: one is the act that was meant. */
export async function actsThatBegin(tx: Tx, start: string): Promise<string[]> {
  if (!ACT_START.test(start)) return [];
  const rows = await tx.selectFrom('act').select('id').where('id', 'like', `${start.toLowerCase()}%`).limit(2).execute();
  return rows.map((row) => row.id);
}
