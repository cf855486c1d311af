import {
  isBlank,
  isCount,
  isFootprintCell,
  isLink,
  isPartNumber,
  isPrice,
  isRefsCell,
  isSequence,
  isShopNumber,
  isSizeCell,
  isSupplierNumber,
  isValueCell,
  isWholeNumber,
  isWords,
  isYesOrNo,
  share,
} from './cell-shapes.ts';
import type { ColumnEvidence, ColumnGuess, ColumnRole } from './columns.ts';
import { readItemText } from './item-text.ts';
import { headerFacts, headerMeanings } from './read-header.ts';
import { readRefs } from './refs.ts';
import { ratingOf } from './stock-marks.ts';

/** Roles that a table can have several columns of. */
const MANY: ReadonlySet<ColumnRole> = new Set<ColumnRole>([
  'description',
  'note',
  'supplierNumber',
  'device',
  'price',
  'link',
  'index',
  'place',
  'alternates',
  'stock-mark',
  'other',
]);

interface Bid {
  readonly column: number;
  readonly role: ColumnRole;
  readonly score: number;
  readonly evidence: ColumnEvidence;
}

/** cells looked at per column: enough to know it */
const SAMPLE = 200;

/**
 * What each column means, from the words of its header and from its cells. Each role goes to the column with the best claim;
 * a column whose claims are all taken is `other`. `told` is a person's correction, by column number from 1 or by header text.
 */
export function guessColumns(
  header: readonly string[] | null,
  rows: readonly (readonly string[])[],
  told: ReadonlyMap<string, ColumnRole> = new Map(),
): ColumnGuess[] {
  const width = widthOf(header, rows.slice(0, SAMPLE));
  const columns = Array.from({ length: width }, (_, column) => rows.slice(0, SAMPLE).map((row) => (row[column] ?? '').trim()));
  const claimed = columns.flatMap((cells, column) => bidsFor(column, header?.[column] ?? '', cells, header !== null, told));
  const bids = header === null ? claimed : [...claimed, ...bidsOfUnknown(claimed, header, columns)];
  const won = award(agreeing(bids, columns));
  const guesses = columns.map((_, column) => guessOf(column, header?.[column] ?? '', won.get(column)));
  return withLeadingRefs(header === null ? withoutHeader(guesses, columns) : settleHeaded(guesses, bids), columns);
}

/** Columns of a table: those of its header, more where most rows are wider. */
function widthOf(header: readonly string[] | null, rows: readonly (readonly string[])[]): number {
  const widths = rows.map((row) => row.findLastIndex((cell) => cell.trim()) + 1).sort((a, b) => a - b);
  const usual = header === null ? widths.at(-1) : widths.length > 2 ? widths[Math.floor(widths.length / 5)] : 0;
  return Math.max(header?.length ?? 0, usual ?? 0);
}

function guessOf(column: number, header: string, bid: Bid | undefined): ColumnGuess {
  const role = bid?.role ?? 'other';
  const facts = ['value', 'tolerance', 'voltage', 'power', 'current'].includes(role) ? headerFacts(header) : {};
  return {
    column: column + 1,
    header: header.trim(),
    role,
    evidence: bid?.evidence ?? 'cells',
    confidence: Math.max(0, Math.min(1, Math.round((bid?.score ?? 0) * 100) / 100)),
    ...facts,
  };
}

function bidsFor(
  column: number,
  header: string,
  cells: readonly string[],
  headed: boolean,
  told: ReadonlyMap<string, ColumnRole>,
): Bid[] {
  const choice = told.get(String(column + 1)) ?? (header.trim() ? told.get(header.trim().toLowerCase()) : undefined);
  if (choice) return [{ column, role: choice, score: 10, evidence: 'told' }];
  if (headed && ratingOf(header)) return [{ column, role: 'stock-mark', score: 1, evidence: 'header' }];
  const empty = cells.every(isBlank) ? 0.4 : 0;
  if (headed && header.trim()) {
    return headerMeanings(header).map(({ role, strength, maybe }, order) => {
      const fit = fitOf(role, cells, order === 0 && strength > 0.9 && !maybe);
      return {
        column,
        role,
        score: strength + fit - empty,
        evidence: strength < 0.7 ? 'header-part' : fit > 0.2 ? 'header-and-cells' : 'header',
      };
    });
  }
  return empty ? [] : cellBids(column, cells);
}

const NAMING: ReadonlySet<ColumnRole> = new Set<ColumnRole>(['refs', 'value', 'partNumber', 'description']);

/**
 * Columns under a header that no word explains are known by their cells, where the table needs them: none else names the parts,
 * or none else can count them. `What is in it | 4k7 1% 0805` → description.
 */
function bidsOfUnknown(claimed: readonly Bid[], header: readonly string[], columns: readonly (readonly string[])[]): Bid[] {
  const won = [...award(claimed).values()];
  const has = (...roles: ColumnRole[]): boolean => won.some(({ role }) => roles.includes(role));
  const unknown = columns.flatMap((cells, column) => {
    const silent = (header[column] ?? '').trim() !== '' && !claimed.some((bid) => bid.column === column) && !cells.every(isBlank);
    return silent ? cellBids(column, cells) : [];
  });
  const counting = unknown.filter(({ role }) => role === 'quantity');
  const counts = !has('refs', 'quantity') && counting.length === 1;
  const names = !won.some(({ role }) => NAMING.has(role));
  const named = (column: number): boolean => !has('refs', 'bag', 'location', 'place') && areRefs(columns[column] ?? []);
  return unknown.filter(({ column, role }) =>
    role === 'quantity' ? counts : (names && NAMING.has(role)) || (role === 'refs' && named(column)),
  );
}

/** Nothing but references, of more than one class of the trade's (IEEE 315): no numbers of boxes. */
function areRefs(cells: readonly string[]): boolean {
  const said = cells.filter((cell) => !isBlank(cell));
  const classes = new Set(
    said.map((cell) => /^(?:R|C|L|D|Q|T|U|IC|J|K|F|FB|X|Y|SW|S|LED|TP|CN|P|BT)(?=\d)/i.exec(cell)?.[0].toUpperCase()),
  );
  return said.length > 2 && share(cells, isRefsCell) === 1 && !classes.has(undefined) && classes.size > 1;
}

/** How well the cells fit a role, about −1 to 0.5; `sure` where the header can hardly mean anything else. */
function fitOf(role: ColumnRole, cells: readonly string[], sure: boolean): number {
  const said = cells.filter((cell) => !isBlank(cell));
  if (said.length === 0) return 0;
  switch (role) {
    case 'refs': {
      const part = share(cells, isRefsCell);
      return sure ? part * 0.4 + 0.2 : part >= 0.5 ? part * 0.5 : -1;
    }
    case 'quantity':
      return isSequence(cells) && said.length > 3 && !sure ? -0.9 : share(cells, isCount) * 0.6 - 0.4;
    case 'index':
      return isSequence(cells) ? 0.5 : share(cells, isWholeNumber) === 1 ? 0 : -0.6;
    case 'value':
      return share(cells, isValueCell) * 0.3 - (share(cells, isLink) > 0.5 ? 1 : 0);
    case 'partNumber':
      return share(cells, isPartNumber) * 0.25 - (share(cells, isWords) > 0.7 ? 0.2 : 0) - share(cells, isShopNumber) * 0.6;
    case 'supplierNumber':
      return share(cells, isShopNumber) * 0.3;
    case 'description':
      return share(cells, isWholeNumber) > 0.8 ? -0.8 : share(cells, isWords) * 0.25;
    case 'footprint':
      return share(cells, isFootprintCell) * 0.2;
    case 'package':
      return share(cells, isSizeCell) * 0.2;
    case 'bag':
    case 'place':
    case 'location':
      return share(cells, (cell) => /^\(?-?\d+[.,]\d+/.test(cell)) > 0.5
        ? -1
        : share(cells, isRefsCell) > 0.8 && !sure
          ? -0.2
          : 0;
    case 'supplier':
      return share(cells, isWholeNumber) > 0.5 ? -0.8 : 0;
    case 'unit':
      return share(cells, (cell) => cell.length <= 5 && !/\d/.test(cell)) - 0.8;
    case 'fitted':
      return share(cells, isYesOrNo) >= 0.8 ? 0.1 : -0.6;
    case 'not-fitted':
      return share(cells, (cell) => cell.length < 16) - 1;
    default:
      return 0;
  }
}

/** Claims of a column without a header: only what its cells show. */
function cellBids(column: number, cells: readonly string[]): Bid[] {
  const bids: Bid[] = [];
  const bid = (role: ColumnRole, score: number): void => {
    if (score > 0.45) bids.push({ column, role, score: score * 0.8, evidence: 'cells' });
  };
  if (isSequence(cells)) bid('index', 1.2);
  const distinct = new Set(cells).size >= cells.length * 0.95;
  const refs = share(cells, isRefsCell);
  bid('refs', distinct ? refs : 0);
  bid('location', distinct ? 0 : share(cells, (cell) => /^[A-Z]{1,2}-?\d{0,3}$/i.test(cell)) * 0.9);
  bid('quantity', share(cells, isCount) * 0.9);
  bid('link', share(cells, isLink));
  bid('price', share(cells, isPrice));
  bid('supplierNumber', share(cells, isSupplierNumber) * 0.95);
  bid('package', share(cells, isSizeCell));
  bid('footprint', share(cells, isFootprintCell));
  bid('value', share(cells, isValueCell) * 0.9);
  bid('partNumber', share(cells, isPartNumber) * 0.7);
  bid('description', Math.max(share(cells, isWords) * 0.9, share(cells, (cell) => /\p{L}/u.test(cell)) * 0.6));
  return bids;
}

/** Of several columns of quantities, the one that counts the references best is it: `Qty-1` before `Qty-25`. */
function agreeing(bids: readonly Bid[], columns: readonly (readonly string[])[]): Bid[] {
  const refs = bids.filter(({ role }) => role === 'refs').sort((a, b) => b.score - a.score)[0];
  const counts = bids.filter(({ role }) => role === 'quantity');
  if (!refs || counts.length < 2) return [...bids];
  const named = (columns[refs.column] ?? []).map((cell) => (cell ? readRefs(cell).refs.length : 0));
  const bonus = (column: number): number => {
    const agree = (columns[column] ?? []).filter((cell, row) => (named[row] ?? 0) > 0 && Number(cell) === named[row]).length;
    return agree / Math.max(1, named.filter(Boolean).length);
  };
  return bids.map((bid) => (bid.role === 'quantity' ? { ...bid, score: bid.score + 0.3 * bonus(bid.column) } : bid));
}

/** Gives each role to its best bid, best bids first; the earlier column wins a tie. */
function award(bids: readonly Bid[]): Map<number, Bid> {
  const won = new Map<number, Bid>();
  const taken = new Set<ColumnRole>();
  for (const bid of [...bids].sort((a, b) => b.score - a.score || a.column - b.column)) {
    if (won.has(bid.column) || taken.has(bid.role) || bid.score < 0.3) continue;
    won.set(bid.column, bid);
    if (!MANY.has(bid.role)) taken.add(bid.role);
  }
  return won;
}

/** Without a column of references, a description may lead with them: `C1 C2 10uF`. */
function withLeadingRefs(guesses: ColumnGuess[], columns: readonly (readonly string[])[]): ColumnGuess[] {
  if (guesses.some(({ role }) => role === 'refs')) return guesses;
  const leads = (column: number): boolean => share(columns[column] ?? [], (cell) => readItemText(cell).refs.length > 0) >= 0.6;
  return guesses.map((guess, column) => (guess.role === 'description' && leads(column) ? { ...guess, refsLead: true } : guess));
}

/** What the columns of a headed table say of each other. */
function settleHeaded(guesses: readonly ColumnGuess[], bids: readonly Bid[]): ColumnGuess[] {
  const has = (role: ColumnRole, but = 0): boolean => guesses.some((guess) => guess.role === role && guess.column !== but);
  const best = bids
    .filter((bid) => bid.role === 'value' && ['description', 'other', 'note', 'device'].includes(guesses[bid.column]?.role ?? ''))
    .sort((a, b) => b.score - a.score)[0];
  return guesses.map((guess) => {
    // with references but no value, the column that may also be a value is it
    if (has('refs') && !has('value') && guess.column - 1 === best?.column)
      return { ...guess, role: 'value', evidence: best.evidence, ...headerFacts(guess.header) };
    // a name beside references and values is that of a symbol in a library
    if (/^name$/i.test(guess.header) && ['partNumber', 'description'].includes(guess.role) && has('refs') && has('value'))
      return { ...guess, role: 'device' };
    // a stock number beside a maker, where nothing else is his part number, is his
    if (
      /^(?:sku|catalog(?:ue)? (?:no\.?|number)|stock code)$/i.test(guess.header) &&
      has('maker') &&
      !has('partNumber') &&
      !has('supplier')
    )
      return { ...guess, role: 'partNumber' };
    // a column without a header is read only where no other describes the part
    if (guess.header === '' && guess.evidence === 'cells' && has('description', guess.column))
      return { ...guess, role: 'other', confidence: 0 };
    return guess;
  });
}

/** Without a header several columns of numbers tell nothing of quantities: then none is taken for one. */
function withoutHeader(guesses: readonly ColumnGuess[], columns: readonly (readonly string[])[]): ColumnGuess[] {
  const numeric = columns.filter((cells, column) => guesses[column]?.role !== 'index' && share(cells, isWholeNumber) > 0.8);
  return guesses.map((guess) =>
    guess.role === 'quantity' && guess.evidence === 'cells' && numeric.length > 1
      ? { ...guess, role: 'other', confidence: 0 }
      : guess,
  );
}
