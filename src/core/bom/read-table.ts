import type { Doubt } from '#core/part/doubt.ts';
import { readPart } from '#core/part/read-part.ts';
import { done, type Outcome } from '#core/stock/refusal.ts';
import type { ReadRow } from './bom.ts';
import type { ColumnGuess, ColumnRole } from './columns.ts';
import { guessColumns } from './guess-columns.ts';
import { readItemText } from './item-text.ts';
import type { PlainRow, PlainTable } from './plain-table.ts';
import { readRow } from './read-row.ts';
import { realign } from './realign.ts';
import { cutSections, type Section } from './sections.ts';

/** What is known of the whole file beside its tables. */
export interface TableHints {
  readonly told?: ReadonlyMap<string, ColumnRole>;
  /** encoding that was guessed, if it was */
  readonly encodingGuessed?: string;
}

export interface TableReading {
  readonly rows: readonly ReadRow[];
  /** of the section with the most rows */
  readonly columns: readonly ColumnGuess[];
}

/** Headings that say nothing of what stands under them. */
const EMPTY_HEADING = /^(?:or|oder|and|und|note|notes|others?|misc\w*|sonstige\w*|divers\w*|optional|required|recommended|parts?|components?|bom|bill of materials?|required parts)$/i;

/** All rows of a table that tell of a part, each with its doubts; refused where a number can't be one. */
export function readTable(table: PlainTable, hints: TableHints = {}): Outcome<TableReading> {
  if (table.form === 'items') return done({ rows: readItems(table), columns: [] });
  const rows: ReadRow[] = [];
  let columns: readonly ColumnGuess[] = [];
  let most = -1;
  for (const section of cutSections(table)) {
    const guessed = guessColumns(section.header, section.rows.map(({ plain }) => plain.cells), hints.told);
    if (!tellsOfParts(guessed, section, table)) continue;
    const read = readSection(section, guessed, table, hints);
    if (!read.ok) return read;
    rows.push(...read.value);
    if (section.rows.length > most) [columns, most] = [guessed, section.rows.length];
  }
  return done({ rows, columns });
}

/** A table under a header without one known word, and with nothing in its cells that names or counts parts, tells of something else. */
function tellsOfParts(columns: readonly ColumnGuess[], section: Section, table: PlainTable): boolean {
  const roles = new Set(columns.map(({ role }) => role));
  const named = roles.has('refs') || roles.has('partNumber') || roles.has('value') || roles.has('description');
  if (table.form !== 'markdown') return named;
  return named && columns.some(({ role, evidence }) => evidence !== 'cells' && role !== 'other' && role !== 'stock-mark') && section.header !== null;
}

function readSection(section: Section, columns: readonly ColumnGuess[], table: PlainTable, hints: TableHints): Outcome<ReadRow[]> {
  const rows: ReadRow[] = [];
  for (const { plain, heading } of section.rows) {
    const { cells, moved } = realign(plain.cells, columns);
    const context = [...table.titles, ...(heading === null ? [] : [heading])].filter((title) => !EMPTY_HEADING.test(title) && title.length < 80);
    const doubts = [...rowDoubts(plain, columns, moved), ...encodingDoubts(cells, columns, hints.encodingGuessed)];
    const noHeader: Doubt[] = section.header === null && rows.length === 0 ? [{ field: 'row', code: 'no-header', args: {} }] : [];
    const read = readRow({ row: plain.row, cells, columns, context, doubts: [...noHeader, ...doubts, ...guessDoubts(columns, cells)] });
    if (!read.ok) return read;
    if (read.value) rows.push(read.value);
  }
  return done(rows);
}

function rowDoubts(plain: PlainRow, columns: readonly ColumnGuess[], moved: boolean): Doubt[] {
  const doubts: Doubt[] = [];
  if (plain.unclosed) doubts.push({ field: 'row', code: 'quote-unclosed', args: { row: plain.row } });
  if (moved) doubts.push({ field: 'row', code: 'cells-uneven', args: { row: plain.row, expected: columns.length, received: plain.cells.length } });
  return doubts;
}

const DOUBTABLE: readonly ColumnRole[] = ['refs', 'quantity', 'location'];

/** Columns known by their cells alone are a doubt on what they give. */
function guessDoubts(columns: readonly ColumnGuess[], cells: readonly string[]): Doubt[] {
  return columns.flatMap(({ column, role, evidence }): Doubt[] => {
    if (evidence !== 'cells' || !DOUBTABLE.includes(role) || !cells[column - 1]?.trim()) return [];
    return [{ field: role as 'refs' | 'quantity' | 'location', code: 'column-guessed', args: { column, taken: role } }]; // as: DOUBTABLE holds fields only
  });
}

const FIELD_OF: Readonly<Partial<Record<ColumnRole, Doubt['field']>>> = { value: 'value', description: 'value', package: 'package', footprint: 'package', maker: 'maker', partNumber: 'partNumber', supplier: 'supplier', location: 'location', tolerance: 'tolerance', refs: 'refs' };

/** Where the encoding was guessed, each cell with a letter beyond ASCII may be read wrong. */
function encodingDoubts(cells: readonly string[], columns: readonly ColumnGuess[], taken: string | undefined): Doubt[] {
  if (taken === undefined) return [];
  const fields = columns.flatMap(({ column, role }) => (/[\u0080-\uffff]/.test(cells[column - 1] ?? '') ? [FIELD_OF[role] ?? 'row'] : []));
  return [...new Set(fields)].map((field): Doubt => ({ field, code: 'encoding-guessed', args: { taken } }));
}

/** Lines of a list in words: those with a count, with references, or of a kind that is known; the rest is prose. */
function readItems(table: PlainTable): ReadRow[] {
  const context = table.titles.filter((title) => !EMPTY_HEADING.test(title) && title.length < 80).join(', ');
  return table.rows.flatMap(({ row, cells }): ReadRow[] => {
    const item = readItemText(cells[0] ?? '');
    if (!/\p{L}/u.test(item.text) && item.refs.length === 0) return [];
    const { part, doubts } = readPart(item.text, { refs: item.refs, fields: { description: item.text, ...(context ? { context } : {}) } });
    if (item.quantity === null && item.refs.length === 0 && (part.kind === 'other' || item.text.length > 80)) return [];
    return [{ row, refs: item.refs, quantity: item.quantity, fitted: true, part, location: null, supplier: null, doubts: [...item.doubts, ...doubts] }];
  });
}
