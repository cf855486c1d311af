import type { Tx } from './engine.ts';

/** What a person said of the file so far. */
export interface ToldDraft {
  /** roles of columns, by number from 1 */
  readonly columns: Readonly<Record<string, string>>;
  /** in the order in which they were given; one for a field of a row */
  readonly answers: readonly { readonly row: number; readonly field: string; readonly text: string | null }[];
  /** rows that are left out */
  readonly out: readonly number[];
  readonly box: string | null;
  readonly board: string | null;
  readonly revision: string | null;
}

export interface DraftSummary {
  readonly id: string;
  /** name of the file */
  readonly name: string;
  readonly is: 'list' | 'bom';
  readonly rows: number;
  readonly made: string;
}

/** A file that was brought in and is not kept yet. */
export interface Draft extends DraftSummary {
  readonly file: Uint8Array;
  readonly told: ToldDraft;
  /** goes up with every change, so that nobody overwrites what another said meanwhile */
  readonly version: number;
}

const SUMMARY = ['id', 'name', 'holds as is', 'row_count as rows', 'made_at as made'] as const;

/** The newest first. */
export async function readDrafts(tx: Tx): Promise<DraftSummary[]> {
  return tx.selectFrom('draft').select(SUMMARY).orderBy('made_at', 'desc').orderBy('id').execute();
}

export async function readDraft(tx: Tx, id: string): Promise<Draft | null> {
  const row = await tx
    .selectFrom('draft')
    .select([...SUMMARY, 'file', 'told', 'version'])
    .where('id', '=', id)
    .executeTakeFirst();
  // as: `insertDraft` and `updateDraft` wrote it; a copy of the bytes, since a driver may hand out a window on its own
  return row ? { ...row, file: Uint8Array.from(row.file), told: JSON.parse(row.told) as ToldDraft } : null;
}

/** The version of a draft as it is now; null where it is gone. */
export async function draftVersion(tx: Tx, id: string): Promise<number | null> {
  const row = await tx.selectFrom('draft').select('version').where('id', '=', id).executeTakeFirst();
  return row?.version ?? null;
}

export async function insertDraft(tx: Tx, draft: Omit<Draft, 'version'>): Promise<void> {
  const { id, name, is, file, rows, told, made } = draft;
  await tx
    .insertInto('draft')
    .values({
      id,
      name,
      holds: is,
      file,
      row_count: rows,
      told: JSON.stringify(told),
      version: 1,
      made_at: made,
      touched_at: made,
    })
    .execute();
}

/** Keeps what was said; false where another said something since that version, or the draft is gone. */
export async function updateDraft(
  tx: Tx,
  { id, version }: Pick<Draft, 'id' | 'version'>,
  { told, rows, at }: { readonly told: ToldDraft; readonly rows: number; readonly at: string },
): Promise<boolean> {
  const { numUpdatedRows } = await tx
    .updateTable('draft')
    .set({ told: JSON.stringify(told), row_count: rows, version: version + 1, touched_at: at })
    .where('id', '=', id)
    .where('version', '=', version)
    .executeTakeFirst();
  return numUpdatedRows > 0n;
}

/** False where there is no such draft. */
export async function deleteDraft(tx: Tx, id: string): Promise<boolean> {
  const { numDeletedRows } = await tx.deleteFrom('draft').where('id', '=', id).executeTakeFirst();
  return numDeletedRows > 0n;
}

/** Drops the drafts that nobody touched since that instant. */
export async function dropDraftsBefore(tx: Tx, instant: string): Promise<void> {
  await tx.deleteFrom('draft').where('touched_at', '<', instant).execute();
}

/** Notes that an act made a draft real, for a page that did not hear the answer. */
export async function noteKept(tx: Tx, draft: string, act: string, at: string): Promise<void> {
  await tx.deleteFrom('kept_draft').where('draft', '=', draft).execute(); // the same file under the same id, brought again
  await tx.insertInto('kept_draft').values({ draft, act, kept_at: at }).execute();
}

/** The act by which a draft was kept, and when; null where it was not. */
export async function findKept(tx: Tx, draft: string): Promise<{ readonly act: string; readonly at: string } | null> {
  const row = await tx.selectFrom('kept_draft').select(['act', 'kept_at as at']).where('draft', '=', draft).executeTakeFirst();
  return row ?? null;
}
