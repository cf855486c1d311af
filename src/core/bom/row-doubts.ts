import type { Doubt, DoubtField } from '#core/part/doubt.ts';
import type { ColumnGuess, ColumnRole } from './columns.ts';
import type { PlainRow } from './plain-table.ts';

/** Fields that a column of each role gives: where a doubt about the column belongs. */
const FIELD_OF: Readonly<Partial<Record<ColumnRole, DoubtField>>> = {
  refs: 'refs',
  quantity: 'quantity',
  value: 'value',
  description: 'value',
  package: 'package',
  footprint: 'package',
  maker: 'maker',
  partNumber: 'partNumber',
  supplier: 'supplier',
  bag: 'location',
  location: 'location',
  place: 'location',
  box: 'location',
  tolerance: 'tolerance',
  voltage: 'voltage',
  power: 'power',
};
/** fields that are taken as they stand: the others have the doubts of the reader of parts */
const GUESSABLE: ReadonlySet<ColumnRole> = new Set<ColumnRole>(['refs', 'quantity', 'bag', 'location', 'partNumber']);

/** What is doubtful about a row before its cells are read: its quotes, its width, its columns, its letters. */
export function rowDoubts(
  plain: PlainRow,
  cells: readonly string[],
  columns: readonly ColumnGuess[],
  encodingGuessed: string | undefined,
): Doubt[] {
  const doubts: Doubt[] = [];
  if (plain.unclosed) doubts.push({ field: 'row', code: 'quote-unclosed', args: { row: plain.row } });
  if (
    plain.cells.length > cells.length &&
    cells.length === columns.length &&
    plain.cells.slice(columns.length).some((cell) => cell.trim())
  ) {
    doubts.push({
      field: 'row',
      code: 'cells-uneven',
      args: { row: plain.row, expected: columns.length, received: plain.cells.length },
    });
  }
  for (const { column, role, evidence } of columns) {
    const field = FIELD_OF[role];
    if (!field) continue;
    const cell = cells[column - 1] ?? '';
    if (evidence === 'cells' && GUESSABLE.has(role) && cell.trim())
      doubts.push({ field, code: 'column-guessed', args: { column, taken: role } });
    const known = doubts.some((doubt) => doubt.code === 'encoding-guessed' && doubt.field === field);
    if (encodingGuessed !== undefined && !known && /[\u0080-\uffff]/.test(cell))
      doubts.push({ field, code: 'encoding-guessed', args: { taken: encodingGuessed } });
  }
  return doubts;
}
