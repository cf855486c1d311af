import type { Doubt } from '#core/part/doubt.ts';
import { rememberingCells } from '#core/part/remember.ts';
import { done, type Outcome, type Refusal } from '#core/stock/refusal.ts';
import type { ReadRow } from './bom.ts';
import { strangersTo, type ColumnGuess, type ColumnRole } from './columns.ts';
import { guessColumns } from './guess-columns.ts';
import { headingsThatTell } from './headings.ts';
import { habitOf } from './number-habit.ts';
import { takeOwnRows } from './own-list.ts';
import type { PlainTable } from './plain-table.ts';
import { countHeaderWords } from './read-header.ts';
import { readItems } from './read-items.ts';
import { readRow, type RowMemory, type RowSource } from './read-row.ts';
import { joinContinued } from './join-continued.ts';
import { realign } from './realign.ts';
import { roleCells, type RoleCell } from './row-cells.ts';
import { refusedCells } from './refused-cells.ts';
import { rowDoubts } from './row-doubts.ts';
import { cutSections, type Section } from './sections.ts';

/** What is known of the whole file beside its tables. */
export interface TableHints {
  /** a person's correction of the columns, by number from 1 or by header */
  readonly told?: ReadonlyMap<string, ColumnRole>;
  /** encoding that was guessed, if it was */
  readonly encodingGuessed?: string;
}

export interface TablesReading {
  /** in the order of the file */
  readonly rows: readonly ReadRow[];
  /** of each row by its number: its cells that say something */
  readonly cells: ReadonlyMap<number, readonly RoleCell[]>;
  /** raw cells of the rows under `columns` */
  readonly table: readonly (readonly string[])[];
  /** of the header with the most rows under it */
  readonly columns: readonly ColumnGuess[];
  /** what `told` names that is no column of any table */
  readonly strangers: readonly string[];
}

interface Placed {
  readonly table: PlainTable;
  readonly section: Section;
}

interface Guessed {
  readonly placed: readonly Placed[];
  readonly columns: readonly ColumnGuess[];
}

/**
 * All rows of a file's tables that tell of a part, each with its doubts; refused where numbers can't be any, all of them at once.
 * Sections under the same header are one table in pieces: their columns are guessed together.
 */
export function readTables(tables: readonly PlainTable[], hints: TableHints = {}): Outcome<TablesReading> {
  const own = takeOwnRows(tables);
  const rows: ReadRow[] = [
    ...own.rows.flatMap((read) => (read.ok ? [read.value] : [])),
    ...tables.filter(({ form }) => form === 'items').flatMap(readItems),
  ];
  const guessed = sameHeader(own.rest).map((placed): Guessed => ({
    placed,
    columns: guessColumns(placed[0]?.section.header ?? null, cellsOf(placed), hints.told),
  }));
  const habit = habitOf(guessed.flatMap(({ placed, columns }) => cellsOf(placed).map((cells) => ({ cells, columns }))));
  const refusals: Refusal[] = own.rows.flatMap((read) => (read.ok ? [] : [read.refusal]));
  const cells = new Map<number, readonly RoleCell[]>();
  const cellReader = rememberingCells();
  for (const { placed, columns } of guessed) {
    const memory: RowMemory = { parts: new Map(), cells: cellReader };
    for (const { section, table } of placed) {
      if (!tellsOfParts(columns, section, table)) continue;
      const read = readSection(section, columns, table, hints, { habit, memory });
      const known = section.header !== null && (table.headed || countHeaderWords(section.header) > 1);
      if (!known && !mostlyParts(read.rows)) continue;
      for (const row of read.rows) rows.push(row);
      for (const [row, said] of read.cells) cells.set(row, said);
      refusals.push(...read.refusals);
    }
  }
  const refused = refusedCells(refusals);
  if (refused) return { ok: false, refusal: refused };
  const largest = guessed.toSorted((a, b) => cellsOf(b.placed).length - cellsOf(a.placed).length)[0];
  const strangers = strangersTo(
    hints.told,
    guessed.flatMap(({ columns }) => columns),
  );
  return done({
    rows: rows.sort((a, b) => a.row - b.row),
    cells,
    table: largest ? cellsOf(largest.placed) : [],
    columns: largest?.columns ?? [],
    strangers,
  });
}

function cellsOf(placed: readonly Placed[]): (readonly string[])[] {
  return placed.flatMap(({ section }) => section.rows.map(({ plain }) => plain.cells));
}

function sameHeader(tables: readonly PlainTable[]): Placed[][] {
  const groups = new Map<string, Placed[]>();
  let lone = 0;
  for (const table of tables) {
    if (table.form === 'items') continue;
    for (const section of cutSections(table)) {
      const key =
        section.header === null ? `no header ${(lone += 1)}` : section.header.map((cell) => cell.trim().toLowerCase()).join('\t');
      groups.set(key, [...(groups.get(key) ?? []), { table, section }]);
    }
  }
  return [...groups.values()];
}

/** A table in which no column names parts tells of something else; in Markdown a known word of the header must say so. */
function tellsOfParts(columns: readonly ColumnGuess[], section: Section, table: PlainTable): boolean {
  const named = columns.some(
    ({ role }) => role === 'refs' || role === 'partNumber' || role === 'value' || role === 'description',
  );
  if (table.form !== 'markdown') return named;
  return (
    named &&
    section.header !== null &&
    columns.some(({ role, evidence }) => evidence !== 'cells' && role !== 'other' && role !== 'stock-mark')
  );
}

/** Without a header that is known, the rows themselves must look like parts: or any text with commas would be a table. */
function mostlyParts(rows: readonly ReadRow[]): boolean {
  const parts = rows.filter(
    ({ refs, part }) => refs.length > 0 || (part.kind !== 'other' && part.kind !== 'not-a-part') || part.facts.partNumber,
  );
  return parts.length >= rows.length * 0.3;
}

function readSection(
  section: Section,
  columns: readonly ColumnGuess[],
  table: PlainTable,
  hints: TableHints,
  how: Pick<RowSource, 'habit' | 'memory'>,
): { rows: ReadRow[]; refusals: Refusal[]; cells: [number, RoleCell[]][] } {
  const rows: ReadRow[] = [];
  const said: [number, RoleCell[]][] = [];
  const refusals: Refusal[] = [];
  for (const { plain, heading } of joinContinued(section.rows, columns)) {
    const cells = realign(plain.cells, columns);
    const noHeader: Doubt[] = section.header === null && rows.length === 0 ? [{ field: 'row', code: 'no-header', args: {} }] : [];
    const read = readRow({
      row: plain.row,
      cells,
      columns,
      ...how,
      context: headingsThatTell([...table.titles, heading]),
      doubts: [...noHeader, ...rowDoubts(plain, cells, columns, hints.encodingGuessed)],
    });
    if (!read.ok) refusals.push(read.refusal);
    else if (read.value) {
      rows.push(read.value);
      said.push([read.value.row, roleCells(cells, columns)]);
    }
  }
  return { rows, refusals, cells: said };
}
