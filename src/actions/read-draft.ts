import { answered } from '#core/bom/answered.ts';
import type { ReadRow } from '#core/bom/bom.ts';
import { isColumnRole, type ColumnRole } from '#core/bom/columns.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { Draft, ToldDraft } from '#db/drafts.ts';
import { readApart } from './read-apart.ts';
import type { FileReading } from './read-file.ts';

/** The file of a draft, read with all that was told of it. */
export interface DraftReading extends FileReading {
  /** those that are not left out: what it becomes when it is kept */
  readonly kept: readonly ReadRow[];
}

/** Reads a draft's file with the columns that were told, and each row with the answers for it. Rows that are gone lose theirs. */
export async function readDraftFile({ file, name, told }: Pick<Draft, 'file' | 'name' | 'told'>): Promise<Outcome<DraftReading>> {
  const columns = toldColumns(told);
  if (!columns.ok) return columns;
  const read = await readApart(file, name, { told: columns.value });
  if (!read.ok) return read;
  const answers = Map.groupBy(told.answers, ({ row }) => row);
  const rows: ReadRow[] = [];
  for (const row of read.value.rows) {
    const given = answers.get(row.row);
    const outcome = given ? answered(row, given, read.value.cells.get(row.row)) : done(row);
    if (!outcome.ok) return outcome;
    rows.push(outcome.value);
  }
  const out = new Set(told.out);
  return done({ ...read.value, rows, kept: rows.filter(({ row }) => !out.has(row)) });
}

function toldColumns({ columns }: ToldDraft): Outcome<ReadonlyMap<string, ColumnRole>> {
  const roles = new Map<string, ColumnRole>();
  for (const [column, role] of Object.entries(columns)) {
    if (!isColumnRole(role)) return refuse('not-valid', { field: `column ${column}`, received: role, expected: 'role' });
    roles.set(column, role);
  }
  return done(roles);
}
