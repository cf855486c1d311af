import type { ReadRow } from '#core/bom/bom.ts';
import type { ColumnGuess, ColumnRole } from '#core/bom/columns.ts';
import { countHeaderWords } from '#core/bom/read-header.ts';
import { readTables as readParts } from '#core/bom/read-table.ts';
import type { RoleCell } from '#core/bom/row-cells.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import { readTables } from '#files/read-tables.ts';

export interface FileReading {
  readonly rows: readonly ReadRow[];
  /** what the columns of the largest table were taken for */
  readonly columns: readonly ColumnGuess[];
  readonly notes: readonly FileNote[];
  /** of each row by its number: its cells that say something */
  readonly cells: ReadonlyMap<number, readonly RoleCell[]>;
  /** raw cells of the largest table */
  readonly table: readonly (readonly string[])[];
}

/** What is to know of the file as a whole. */
export interface FileNote {
  readonly code: 'encoding-guessed' | 'several-tables';
  readonly args: Readonly<Record<string, string | number>>;
}

/**
 * Reads the bytes of a BOM or stock list to rows. Refused with file, row and column where it is no table or holds a number
 * that can't be one; every other trouble is a doubt on its field.
 */
export function readFile(bytes: Uint8Array, fileName: string, told?: ReadonlyMap<string, ColumnRole>): Outcome<FileReading> {
  const file = readTables(bytes, countHeaderWords);
  if (!file.ok) return refuse(file.fault.code, { file: fileName, ...file.fault.args });
  const { tables, encoding, encodingGuessed } = file.value;
  const read = readParts(tables, { ...(told ? { told } : {}), ...(encodingGuessed ? { encodingGuessed: encoding } : {}) });
  if (!read.ok) return refuse(read.refusal.code, { file: fileName, ...read.refusal.args });
  const { rows, columns, strangers, cells, table } = read.value;
  const [stranger] = strangers;
  if (stranger !== undefined) return refuse('no-such-column', { file: fileName, column: stranger, columns: namesOf(columns) });
  if (rows.length === 0) return refuse('file-no-table', { file: fileName, why: 'no row in it names a part' });
  return done({ rows, columns, cells, table, notes: notesOf(tables.length, encodingGuessed ? encoding : null) });
}

/** `1 'Bag', 2 'What'`; a column without a header is its number alone. */
function namesOf(columns: readonly ColumnGuess[]): string {
  return columns.map(({ column, header }) => (header ? `${column} '${header}'` : String(column))).join(', ');
}

function notesOf(tables: number, guessed: string | null): FileNote[] {
  const notes: FileNote[] = [];
  if (guessed !== null) notes.push({ code: 'encoding-guessed', args: { taken: guessed } });
  if (tables > 1) notes.push({ code: 'several-tables', args: { tables } });
  return notes;
}
