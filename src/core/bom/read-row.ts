import type { Doubt } from '#core/part/doubt.ts';
import { readPart } from '#core/part/read-part.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { ReadRow } from './bom.ts';
import { isLink } from './cell-shapes.ts';
import type { ColumnGuess } from './columns.ts';
import { fittedCellSaysNo, notFittedCell, saysNotFitted } from './fitted.ts';
import { readLeadingRefs } from './item-text.ts';
import { readQuantity } from './quantity.ts';
import { MOST_REFS, readRefs, type RefsReading } from './refs.ts';
import { cellsOf, kindByHeader, partFields, roleCells, type RoleCell } from './row-cells.ts';
import { readMarks } from './stock-marks.ts';

/** What a row is read with: its cells, what their columns mean, and the headings over it. */
export interface RowSource {
  readonly row: number;
  readonly cells: readonly string[];
  readonly columns: readonly ColumnGuess[];
  readonly context: readonly string[];
  readonly doubts: readonly Doubt[];
}

const PART_ROLES = new Set(['value', 'footprint', 'package', 'partNumber', 'maker', 'description', 'device', 'supplierNumber']);
const TOTAL = /^(?:sub-?\s?total|(?:grand )?total|sum|gesamt|gesamtsumme|summe|somme|totale?s?|suma|summa|totaal|итого|合计|合計|総計)\b/i;
/** columns in which a short mark alone (`NF`, `NC`) means left off */
const MARKABLE = new Set(['value', 'quantity', 'note', 'refs', 'partNumber']);
const NO_REFS: RefsReading = { refs: [], rest: '', doubts: [], tooMany: null };

/**
 * One row to a line of a BOM or a stock list; null where it says nothing of a part (totals, blank lines).
 * Refused where a number can't be one: a quantity below zero, a range of references without end.
 */
export function readRow(source: RowSource): Outcome<ReadRow | null> {
  const said = roleCells(source.cells, source.columns);
  if (isTotal(said)) return done(null);
  const { cells, refs } = withRefs(said);
  const place = (role: string): { row: number; column: number } => ({ row: source.row, column: cells.find(({ column }) => column.role === role)?.column.column ?? 0 });
  if (refs.tooMany !== null) return refuse('too-many-refs', { ...place('refs'), text: refs.tooMany, most: MOST_REFS });
  const marks = readMarks(source.columns.filter(({ role }) => role === 'stock-mark').map(({ header, column }) => ({ header, cell: source.cells[column - 1] ?? '' })));
  const printed = cellsOf(cells, 'quantity')[0] ?? marks.cell;
  const quantity = readQuantity(printed);
  if (quantity.impossible) return refuse('number-impossible', { ...place('quantity'), text: printed, why: quantity.impossible });
  if (!saysPart(cells, refs)) return done(null);
  const fitted = fittedOf(source, cells, refs, quantity.quantity);
  const fields = { ...partFields(cells), ...(marks.rating ? { [marks.rating.field]: marks.rating.text } : {}) };
  const description = [fields.description, refs.rest].filter(Boolean).join(', ');
  const context = source.context.join(', ');
  const kind = kindByHeader(cells);
  const part = readPart(textOf(cells, refs.rest), {
    refs: classRefs(refs),
    fields: { ...fields, ...(description ? { description } : {}), ...(context ? { context } : {}) },
    ...(kind ? { kind } : {}),
  });
  return done({
    row: source.row,
    refs: refs.refs,
    quantity: quantity.quantity,
    fitted: fitted.fitted,
    part: part.part,
    location: cellsOf(cells, 'location')[0] ?? cellsOf(cells, 'box')[0] ?? null,
    box: cellsOf(cells, 'box')[0] ?? null,
    supplier: supplierOf(cells),
    doubts: [...source.doubts, ...refs.doubts, ...quantity.doubts, ...marks.doubts, ...agreement(refs, quantity.quantity, fitted.fitted), ...fitted.doubts, ...part.doubts],
  });
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

function fittedOf(source: RowSource, cells: readonly RoleCell[], refs: RefsReading, quantity: number | null): { fitted: boolean; doubts: Doubt[] } {
  const marked = cellsOf(cells, 'not-fitted').some(notFittedCell) || cellsOf(cells, 'fitted').some(fittedCellSaysNo);
  const said = cells.some(({ column, text }) => saysNotFitted(text, MARKABLE.has(column.role)));
  if (marked || said || (quantity === 0 && refs.refs.length > 0)) return { fitted: false, doubts: [] };
  const value = (source.cells[(source.columns.find(({ role }) => role === 'value')?.column ?? 0) - 1] ?? '').trim();
  const without = /^(?:n\/a|n\.a\.|n\.c\.|nc)$/i.test(value) && refs.refs.some((ref) => /^[RCL]\d/.test(ref));
  return { fitted: !without, doubts: without ? [{ field: 'fitted', code: 'two-readings', args: { text: value, taken: 'not fitted', other: 'fitted, value unknown' } }] : [] };
}

/** References that show the class of the part; those of a range that can't be followed still do. */
function classRefs(refs: RefsReading): readonly string[] {
  if (refs.refs.length > 0) return refs.refs;
  return refs.doubts.flatMap(({ args }) => /^[A-Z]+\d+/i.exec(String(args['text'] ?? ''))?.[0] ?? []);
}

/** A quantity that is not the number of the references is kept as printed, with a doubt. */
function agreement(refs: RefsReading, quantity: number | null, fitted: boolean): Doubt[] {
  if (quantity === null || refs.refs.length === 0 || quantity === refs.refs.length || (!fitted && quantity === 0)) return [];
  return [{ field: 'quantity', code: 'quantity-not-refs', args: { quantity, refs: refs.refs.length } }];
}

function supplierOf(cells: readonly RoleCell[]): string | null {
  const text = cellsOf(cells, 'supplier')[0] ?? null;
  const host = text === null ? null : /^(?:https?:\/\/)?(?:www\.)?([\w-]+(?:\.[\w-]+)+)(?:\/\S*)?$/i.exec(text);
  return host && text?.includes('/') ? (host[1] ?? text) : text;
}

/** What a person wrote of the part, cells in their order, repeats left out. */
function textOf(cells: readonly RoleCell[], rest: string): string {
  const said = cells.filter(({ column, text }) => PART_ROLES.has(column.role) && column.role !== 'supplierNumber' && !isLink(text)).map(({ text }) => text);
  return [...new Set(rest ? [rest, ...said] : said)].join(' ');
}
