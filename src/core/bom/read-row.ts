import type { Doubt } from '#core/part/doubt.ts';
import type { Part } from '#core/part/part.ts';
import { readPart } from '#core/part/read-part.ts';
import { remembered } from '#core/part/remember.ts';
import type { CellReader } from '#core/part/cell.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { ReadRow } from './bom.ts';
import { readAlternates } from './alternates.ts';
import { isLink } from './cell-shapes.ts';
import type { ColumnGuess, ColumnRole } from './columns.ts';
import { fittedCell, notFittedCell, saysNotFitted } from './fitted.ts';
import { readLeadingRefs } from './item-text.ts';
import { eitherWay, plainNumbers, type NumberHabit } from './number-habit.ts';
import { needDoubts, unnamedDoubts } from './per-board.ts';
import { readQuantity } from './quantity.ts';
import { MOST_REFS, readRefs, type RefsReading } from './refs.ts';
import { cellsOf, kindByHeader, partFields, roleCells, type RoleCell } from './row-cells.ts';
import { readMarks, type Rating } from './stock-marks.ts';
import { bagDoubts, whereOf } from './where.ts';

/** Parts by all that they are read from, and a reader of cells that remembers: rows of long lists are often alike. */
export interface RowMemory {
  readonly parts: Map<string, RowPart>;
  readonly cells: CellReader;
}

interface RowPart {
  readonly part: Part;
  readonly doubts: readonly Doubt[];
}

/** What a row is read with: its cells, what their columns mean, and the headings over it. */
export interface RowSource {
  readonly row: number;
  readonly cells: readonly string[];
  readonly columns: readonly ColumnGuess[];
  readonly context: readonly string[];
  readonly doubts: readonly Doubt[];
  /** how the file writes its decimals */
  readonly habit?: NumberHabit;
  /** what was read of rows under the same columns */
  readonly memory?: RowMemory;
}

const PART_ROLES = new Set(['value', 'footprint', 'package', 'partNumber', 'maker', 'description', 'device', 'supplierNumber']);
const TOTAL =
  /^(?:sub-?\s?total|(?:grand )?total|sum|gesamt|gesamtsumme|summe|somme|totale?s?|suma|summa|totaal|итого|合计|合計|総計)\b/i;
/** columns in which a short mark alone (`NF`, `NC`) means left off */
const MARKABLE = new Set(['value', 'quantity', 'note', 'refs', 'partNumber']);
/** columns in which a number is a number, not a piece of a name */
const COUNTING = new Set(['value', 'description', 'tolerance', 'voltage', 'power', 'current']);
const NO_REFS: RefsReading = { refs: [], rest: '', doubts: [], tooMany: null };

/**
 * One row to a line of a BOM or a stock list; null where it says nothing of a part (totals, blank lines).
 * Refused where a number can't be one: a quantity below zero, a range of references without end.
 */
export function readRow(source: RowSource): Outcome<ReadRow | null> {
  const said = roleCells(source.cells, source.columns);
  if (isTotal(said)) return done(null);
  const { cells, refs } = withRefs(said);
  const place = (role: string): { row: number; column: number } => ({
    row: source.row,
    column: cells.find(({ column }) => column.role === role)?.column.column ?? 0,
  });
  if (refs.tooMany !== null) return refuse('too-many-refs', { ...place('refs'), text: refs.tooMany, most: MOST_REFS });
  const marks = readMarks(
    source.columns
      .filter(({ role }) => role === 'stock-mark')
      .map(({ header, column }) => ({ header, cell: source.cells[column - 1] ?? '' })),
  );
  const printed = cellsOf(cells, 'quantity')[0] ?? marks.cell;
  const quantity = readQuantity(printed, source.habit);
  if (quantity.impossible) return refuse('number-impossible', { ...place('quantity'), text: printed, why: quantity.impossible });
  if (!saysPart(cells, refs)) return done(null);
  const fitted = fittedOf(source, cells, refs, quantity.quantity);
  const { part, doubts } = partOf(source, cells, refs, marks.rating);
  const alternates = readAlternates(cellsOf(cells, 'alternates'), part.kind);
  const unnamed =
    fitted.fitted && refs.refs.length + refs.doubts.length === 0 && source.columns.some(({ role }) => role === 'refs');
  const remark = cellsOf(cells, 'note')
    .filter((text) => !isLink(text))
    .join('; ');
  const { location, bag, box, place: within } = whereOf(cells);
  return done({
    row: source.row,
    refs: refs.refs,
    quantity: quantity.quantity,
    fitted: fitted.fitted,
    part,
    location,
    bag,
    box,
    place: within,
    supplier: supplierOf(cells),
    ...(remark ? { remark } : {}),
    ...(alternates.length ? { alternates } : {}),
    doubts: [
      ...source.doubts,
      ...refs.doubts,
      ...quantity.doubts,
      ...marks.doubts,
      ...needDoubts(part, refs.refs, quantity.quantity, fitted.fitted),
      ...(unnamed ? unnamedDoubts(part, quantity.quantity) : []),
      ...fitted.doubts,
      ...bagDoubts({ bag }),
      ...doubts,
    ],
  });
}

/** Columns that say nothing of the part itself. */
const SILENT = new Set<ColumnRole>(['refs', 'quantity', 'bag', 'location', 'box', 'place', 'index', 'price', 'supplier', 'link']);

/** The part of a row, read once for all rows whose cells say the same. */
function partOf(source: RowSource, printed: readonly RoleCell[], refs: RefsReading, rating: Rating | null): RowPart {
  const cells = printed.filter(({ column }) => !SILENT.has(column.role));
  if (!source.memory) return readPartOf(source, cells, refs, rating);
  const letters = /^[A-Za-z]+/.exec(classRefs(refs)[0] ?? '')?.[0] ?? '';
  let key = `${letters}\0${refs.rest}\0${source.context.join('\0')}\0${rating ? `${rating.field} ${rating.text}` : ''}`;
  for (const { column, text } of cells) key += `\0${column.column} ${text}`;
  return remembered(source.memory.parts, key, () => readPartOf(source, cells, refs, rating));
}

/** The part from the cells that tell of it, with the doubt of a point that may be a thousands mark. */
function readPartOf(source: RowSource, printed: readonly RoleCell[], refs: RefsReading, rating: Rating | null): RowPart {
  const about = printed.map(({ text }) => text).join(' ');
  const cells = printed.map((cell) =>
    COUNTING.has(cell.column.role) ? { ...cell, text: plainNumbers(cell.text, source.habit ?? null, about) } : cell,
  );
  const fields = { ...partFields(cells), ...(rating ? { [rating.field]: rating.text } : {}) };
  const description = [fields.description, refs.rest].filter(Boolean).join(', ');
  const context = source.context.join(', ');
  const kind = kindByHeader(cells);
  const { part, doubts } = readPart(
    textOf(printed, refs.rest),
    {
      refs: classRefs(refs),
      fields: { ...fields, ...(description ? { description } : {}), ...(context ? { context } : {}) },
      ...(kind ? { kind } : {}),
    },
    source.memory?.cells,
  );
  const valued = part.facts.value && part.facts.value.unit !== 'Hz' && part.facts.value.origin === 'stated';
  const either = valued && !source.habit ? eitherWay(`${fields.value ?? ''} ${fields.description ?? ''}`, about) : null;
  return { part, doubts: either ? [...doubts, { field: 'value', code: 'two-readings', args: either }] : doubts };
}

/** The references of a row, and its cells without those that lead a description. */
function withRefs(cells: readonly RoleCell[]): { cells: readonly RoleCell[]; refs: RefsReading } {
  const text = cellsOf(cells, 'refs').join(', ');
  const leading = cells.find(({ column }) => column.refsLead);
  if (text || !leading) return { cells, refs: text ? readRefs(text) : NO_REFS };
  const { refs, doubts, rest } = readLeadingRefs(leading.text);
  return { cells: cells.map((cell) => (cell === leading ? { ...cell, text: rest } : cell)), refs: { ...NO_REFS, refs, doubts } };
}

/** A row of sums: its first words are those of a total, and little else stands in it. */
function isTotal(cells: readonly RoleCell[]): boolean {
  return cells.length < 5 && cells.some(({ text }, at) => at < 2 && TOTAL.test(text));
}

/** A row without references is a part only if a cell says what it is. */
function saysPart(cells: readonly RoleCell[], refs: RefsReading): boolean {
  if (refs.refs.length > 0 || refs.doubts.length > 0) return true;
  return refs.rest !== '' || cells.some(({ column, text }) => PART_ROLES.has(column.role) && /[\p{L}\d]/u.test(text));
}

function fittedOf(
  source: RowSource,
  cells: readonly RoleCell[],
  refs: RefsReading,
  quantity: number | null,
): { fitted: boolean; doubts: Doubt[] } {
  const told = cellsOf(cells, 'fitted');
  const marked = cellsOf(cells, 'not-fitted').some(notFittedCell) || told.some((text) => fittedCell(text) === false);
  const said = cells.some(({ column, text }) => saysNotFitted(text, MARKABLE.has(column.role)));
  if (marked || said || (quantity === 0 && refs.refs.length > 0)) return { fitted: false, doubts: [] };
  const value = (source.cells[(source.columns.find(({ role }) => role === 'value')?.column ?? 0) - 1] ?? '').trim();
  const without = /^(?:n\/a|n\.a\.|n\.c\.|nc)$/i.test(value) && refs.refs.some((ref) => /^[RCL]\d/.test(ref));
  if (without) return { fitted: false, doubts: [fittedDoubt(value, 'not fitted', 'fitted, value unknown')] };
  const strange = told.find((text) => fittedCell(text) === null);
  return { fitted: true, doubts: strange === undefined ? [] : [fittedDoubt(strange, 'fitted', 'not fitted')] };
}

function fittedDoubt(text: string, taken: string, other: string): Doubt {
  return { field: 'fitted', code: 'two-readings', args: { text, taken, other } };
}

/** References that show the class of the part; those of a range that can't be followed still do. */
function classRefs(refs: RefsReading): readonly string[] {
  if (refs.refs.length > 0) return refs.refs;
  return refs.doubts.flatMap(({ args }) => /^[A-Z]+\d+/i.exec(String(args['text'] ?? ''))?.[0] ?? []);
}

function supplierOf(cells: readonly RoleCell[]): string | null {
  const text = cellsOf(cells, 'supplier')[0] ?? null;
  const host = text === null ? null : /^(?:https?:\/\/)?(?:www\.)?([\w-]+(?:\.[\w-]+)+)(?:\/\S*)?$/i.exec(text);
  return host && text?.includes('/') ? (host[1] ?? text) : text;
}

/** What a person wrote of the part, cells in their order, repeats left out. */
function textOf(cells: readonly RoleCell[], rest: string): string {
  const said = cells
    .filter(({ column, text }) => PART_ROLES.has(column.role) && column.role !== 'supplierNumber' && !isLink(text))
    .map(({ text }) => text);
  return [...new Set(rest ? [rest, ...said] : said)].join(' ');
}
