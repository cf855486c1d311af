import { builtOnce } from './built-once.ts';
import { nextChange } from './change.ts';
import type { Tx } from './engine.ts';

/** An act as it begins; `perform` seals it with its result. */
export interface NewAct {
  readonly id: string;
  readonly kind: string;
  readonly who: string;
  readonly device: string | null;
  readonly happenedAt: string;
  readonly recordedAt: string;
  readonly undoes: string | null;
  readonly note: string | null;
  /** what an undo must know beyond movements and bag changes; plain JSON */
  readonly memo: unknown;
}

/** An act that is in the ledger. */
export interface KnownAct {
  readonly id: string;
  readonly kind: string;
  readonly undoes: string | null;
  readonly undoneBy: string | null;
  readonly change: number;
  readonly bodyHash: string;
  readonly result: unknown;
  readonly memo: unknown;
}

type ActRow = Omit<NewAct, 'memo'> & { readonly change: number; readonly memo: string };

const insertAct = builtOnce<{ [K in keyof ActRow]: ActRow[K] }, unknown>((tx, put) =>
  tx.insertInto('act').values({
    id: put('id'),
    kind: put('kind'),
    who: put('who'),
    device: put('device'),
    happened_at: put('happenedAt'),
    recorded_at: put('recordedAt'),
    undoes: put('undoes'),
    note: put('note'),
    change: put('change'),
    body_hash: '',
    result: '',
    memo: put('memo'),
  }),
);

const updateSeal = builtOnce<{ id: string; bodyHash: string; result: string }, unknown>((tx, put) =>
  tx
    .updateTable('act')
    .set({ body_hash: put('bodyHash'), result: put('result') })
    .where('id', '=', put('id')),
);

interface FoundAct {
  readonly id: string;
  readonly kind: string;
  readonly undoes: string | null;
  readonly change: number;
  readonly body_hash: string;
  readonly result: string;
  readonly memo: string;
  readonly undone_by: string | null;
}

const selectAct = builtOnce<{ id: string }, FoundAct>((tx, put) =>
  tx
    .selectFrom('act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .select([
      'act.id',
      'act.kind',
      'act.undoes',
      'act.change',
      'act.body_hash',
      'act.result',
      'act.memo',
      'later.id as undone_by',
    ])
    .where('act.id', '=', put('id')),
);

/** Enters the act; answers the change number that its transaction will take. */
export async function startAct(tx: Tx, act: NewAct): Promise<number> {
  const change = await nextChange(tx);
  const { id, kind, who, device, happenedAt, recordedAt, undoes, note } = act;
  await insertAct(tx, { id, kind, who, device, happenedAt, recordedAt, undoes, note, change, memo: JSON.stringify(act.memo) });
  return change;
}

/** Keeps the answer of an act, for a repeat, and the hash of what was asked. */
export async function sealAct(tx: Tx, id: string, bodyHash: string, result: unknown): Promise<void> {
  await updateSeal(tx, { id, bodyHash, result: JSON.stringify(result) });
}

export async function findAct(tx: Tx, id: string): Promise<KnownAct | null> {
  const [row] = await selectAct(tx, { id });
  if (!row) return null;
  return {
    id: row.id,
    kind: row.kind,
    undoes: row.undoes,
    undoneBy: row.undone_by,
    change: row.change,
    bodyHash: row.body_hash,
    result: row.result === '' ? null : JSON.parse(row.result),
    memo: JSON.parse(row.memo),
  };
}

/** The newest act that is no undo and was not undone, or null. */
export async function lastAct(tx: Tx): Promise<string | null> {
  const row = await tx
    .selectFrom('act')
    .leftJoin('act as later', 'later.undoes', 'act.id')
    .select('act.id')
    .where('act.undoes', 'is', null)
    .where('later.id', 'is', null)
    .orderBy('act.change', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row?.id ?? null;
}
