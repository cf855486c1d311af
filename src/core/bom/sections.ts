import { isBlank, isPrice, isRefsCell, share } from './cell-shapes.ts';
import type { PlainRow, PlainTable } from './plain-table.ts';
import { countHeaderWords, headerMeanings } from './read-header.ts';
import { ratingOf } from './stock-marks.ts';

/** Data rows under one header, each with the section heading over it. */
export interface Section {
  readonly header: readonly string[] | null;
  readonly rows: readonly { readonly plain: PlainRow; readonly heading: string | null }[];
}

/** a header may stand below this many lines of title */
const PREAMBLE = 60;

/**
 * Cuts a table at its header rows: what stands above the first is preamble, a header that comes again starts anew
 * (its columns may have changed), a row with one cell of words is a heading for what follows.
 */
export function cutSections(table: PlainTable): Section[] {
  const rows = table.rows.filter((row) => row.cells.some((cell) => cell.trim()) && !isRule(row.cells));
  const first = table.headed ? 0 : firstHeader(rows);
  if (first < 0) return rows.length > 0 ? [{ header: null, rows: headedRows(rows, null, []) }] : [];
  const starts = rows.flatMap((row, at) =>
    at === first || (at > first && isHeaderAgain(row.cells, rows[first]?.cells ?? [])) ? [at] : [],
  );
  return starts.map((start, index) => {
    const header = rows[start];
    const body = rows.slice(start + 1, starts[index + 1] ?? rows.length);
    return { header: header?.cells ?? [], rows: headedRows(body, headingBefore(rows, start), header?.cells ?? []) };
  });
}

function isRule(cells: readonly string[]): boolean {
  return cells.every((cell) => /^[\s_=*-]*$/.test(cell)) && cells.some((cell) => /[_=*-]{3,}/.test(cell));
}

/** The first row that reads as a header: two known words, and known words or plain words in most of its cells. */
function firstHeader(rows: readonly PlainRow[]): number {
  const candidates = rows.slice(0, PREAMBLE);
  const sure = candidates.findIndex(({ cells }) => headerScore(cells) >= 2);
  if (sure >= 0) return sure;
  if (rows[0] && headerScore(rows[0].cells) >= 1 && rows.length > 1) return 0;
  return isOverNumbers(rows) ? 0 : -1;
}

/** words of a header that is not known are few */
const LONGEST_WORDS = 40;

/** A first row of words alone over a column of numbers is a header, whatever its words: `What is in it | How many`. */
function isOverNumbers(rows: readonly PlainRow[]): boolean {
  const [first, ...below] = rows;
  const said = (first?.cells ?? []).flatMap((cell, at) => (isBlank(cell) ? [] : [{ cell, at }]));
  if (said.length < 2 || below.length < 2 || said.some(({ cell }) => /\d/.test(cell) || cell.length > LONGEST_WORDS))
    return false;
  return said.some(
    ({ at }) =>
      share(
        below.map(({ cells }) => cells[at] ?? ''),
        (cell) => /^[~≈]?\s*\d/.test(cell.trim()),
      ) >= 0.8,
  );
}

function headerScore(cells: readonly string[]): number {
  const said = cells.filter((cell) => !isBlank(cell));
  const numbers = said.filter((cell) => /^[\d.,]+$/.test(cell.trim()) || isPrice(cell) || (isRefsCell(cell) && !ratingOf(cell)));
  const ratings = said.filter((cell) => ratingOf(cell)).length;
  const words = countHeaderWords(cells) + (ratings > 1 ? ratings : 0);
  if (numbers.length > 0 && numbers.length >= words) return 0;
  return words >= said.length * 0.4 ? words : 0;
}

function isHeaderAgain(cells: readonly string[], header: readonly string[]): boolean {
  const said = cells.filter((cell) => !isBlank(cell));
  if (said.length > 1 && said.every((cell) => header.some((word) => word.trim() === cell.trim()))) return true;
  // most rows are data: those with numbers in them are not looked up
  if (said.length < 3 || said.filter((cell) => /\d/.test(cell)).length > said.length * 0.3) return false;
  return headerScore(cells) >= 3 && countHeaderWords(cells) >= said.length * 0.75;
}

function headingBefore(rows: readonly PlainRow[], header: number): string | null {
  const above = rows[header - 1];
  return above && header > 0 ? headingOf(above.cells, rows[header]?.cells.length ?? 0) : null;
}

function headedRows(rows: readonly PlainRow[], start: string | null, header: readonly string[]): Section['rows'] {
  let heading = start;
  const names = ['description', 'value', 'partNumber'].includes(headerMeanings(header[0] ?? '')[0]?.role ?? '');
  return rows.flatMap((plain, at) => {
    const own = headingOf(plain.cells, header.length);
    const apart = plain.row - (rows[at - 1]?.row ?? plain.row - 1) > 1;
    if (own === null || (names && !apart && !standsOut(plain.cells[0] ?? ''))) return [{ plain, heading }];
    heading = own;
    return [];
  });
}

/** Where the first column names parts, a heading must look like one: a colon, capitals, or a blank line before it. */
function standsOut(text: string): boolean {
  return /:\s*$/.test(text) || (/\p{Lu}{3}/u.test(text) && !/[\p{Ll}\d]/u.test(text));
}

/** A row whose only cell is its first and holds words: a section heading. `ICs,,,` → `ICs`. */
export function headingOf(cells: readonly string[], width: number): string | null {
  if (Math.max(width, cells.length) < 3) return null;
  const said = cells.flatMap((cell, at) => (isBlank(cell) ? [] : [at]));
  const [only] = said;
  if (said.length !== 1 || only !== 0) return null;
  const text = (cells[0] ?? '').trim().replace(/:$/, '');
  return /\p{L}{2,}/u.test(text) && !isRefsCell(text) ? text : null;
}
