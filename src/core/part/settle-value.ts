import { decimal, multiply, type Decimal } from '#core/quantity/decimal.ts';
import { readFigures } from '#core/quantity/mark.ts';
import type { Quantity } from '#core/quantity/quantity.ts';
import { readToleranceLetter } from '#core/quantity/tolerance.ts';
import type { Cell } from './cell.ts';
import type { Doubt } from './doubt.ts';
import { KIND_ROWS } from './kinds.data.ts';
import type { Fact, FactKey, Kind } from './part.ts';

export interface Settled {
  readonly facts: readonly Fact[];
  readonly doubts: readonly Doubt[];
}

/** One reading of a number as the value of the part. */
interface Candidate {
  readonly value: Decimal;
  /** 2 with its unit, 1 with a prefix or letter, 0 a bare number or printed code */
  readonly rank: number;
  readonly quantity: Quantity;
  readonly letter: string | null;
  readonly doubt: Doubt | null;
}

const NOTHING: Settled = { facts: [], doubts: [] };

/** The value of a part of this kind, from the value cell, else the description, else the ordering code. */
export function settleValue(kind: Kind, cells: readonly Cell[]): Settled {
  const unit = KIND_ROWS[kind].value;
  if (unit === undefined) return NOTHING;
  const reads = cells.filter((cell) => cell.field !== 'footprint' && cell.field !== 'package' && cell.field !== 'context').map((cell) => readInCell(cell, kind, unit));
  const stated = reads.filter((read) => read !== null);
  const decoded = decodedFacts(cells, kind);
  const decodedValue = decoded.find((fact) => fact.key === 'value')?.value ?? null;
  const taken = choose(stated, decodedValue);
  if (!taken) return { facts: decodedValue === null || stated.length ? [] : decoded.filter((fact) => fact.key === 'value'), doubts: stated.flatMap((read) => (read.doubt ? [read.doubt] : [])) };
  const doubts: Doubt[] = taken.doubt ? [taken.doubt] : [];
  const against = stated.find((read) => read.candidate && read.candidate.value !== taken.candidate.value);
  if (against?.candidate) doubts.push(conflict(taken.candidate.value, against.candidate.value, against.place));
  else if (decodedValue !== null && decodedValue !== taken.candidate.value) doubts.push(conflict(taken.candidate.value, decodedValue, 'partNumber'));
  const facts: Fact[] = [{ key: 'value', value: taken.candidate.value, unit, origin: 'stated' }];
  return { facts: [...facts, ...letterTolerance(taken.candidate, kind)], doubts };
}

function conflict(taken: string, other: string, place: string): Doubt {
  return { field: 'value', code: 'conflict', args: { taken, other, place } };
}

/** Facts that the first decoded ordering code of this kind gives. */
export function decodedFacts(cells: readonly Cell[], kind: Kind): readonly Fact[] {
  for (const cell of cells) for (const code of cell.codes) if (code.decoded && code.kind === kind) return code.decoded.facts;
  return [];
}

interface CellRead {
  readonly place: string;
  /** null where the cell holds a range or a list */
  readonly candidate: Candidate | null;
  readonly doubt: Doubt | null;
}

type Taken = CellRead & { readonly candidate: Candidate };

/** The value cell goes first, unless it is a bare number against a unit elsewhere, or the ordering code sides with the other. */
function choose(stated: readonly CellRead[], decodedValue: string | null): Taken | null {
  const whole = stated.filter((read): read is Taken => read.candidate !== null);
  const [first] = whole;
  if (!first) return null;
  const confirmed = decodedValue === null ? undefined : whole.find((read) => read.candidate.value === decodedValue);
  if (confirmed) return confirmed;
  const withUnit = whole.find((read) => read.candidate.rank === 2);
  return first.candidate.rank === 0 && withUnit ? withUnit : first;
}

function readInCell(cell: Cell, kind: Kind, unit: string): CellRead | null {
  const quantities = cell.atoms.flatMap((atom) => (atom.type === 'quantity' ? [atom.quantity] : []));
  const candidates = quantities.flatMap((quantity, index) => {
    if (/@\s*$/.test(cell.text.slice(0, quantity.start))) return [];
    const candidate = interpret(quantity, kind, unit, cell, index);
    return candidate ? [candidate] : [];
  });
  if (candidates.length === 0) return null;
  const rank = Math.max(...candidates.map((one) => one.rank));
  const best = candidates.find((one) => one.rank === rank);
  if (!best) return null;
  if (inRange(cell.text, quantities, best.quantity)) {
    return { place: cell.field, candidate: null, doubt: { field: 'value', code: 'range', args: { text: cell.text.trim() } } };
  }
  return { place: cell.field, candidate: best, doubt: best.doubt ?? otherDoubt(best, cell.text) };
}

const JOINED = /^[\s-]*(?:-|~|…|\.{2,3}|to|bis|a|à|und|and|or|oder|et|ou|y|o|e|,|;|&)[\s~-]*$/i;
const BOUNDED = /(?:[<>≤≥]=?|kleiner(?: gleich)?|groesser(?: gleich)?|größer(?: gleich)?|bis(?: zu)?|zwischen|between|up to|unter|über|under|over|below|from|von)\s*$/i;

/** `100 k … 1 M`, `20-50 ohm`, `16 und 20 MHz`, `≤ 10 Ω`: no single value. */
function inRange(text: string, quantities: readonly Quantity[], best: Quantity): boolean {
  if (BOUNDED.test(text.slice(0, best.start)) || /^\s*~\s*\d/.test(text.slice(best.end))) return true;
  return quantities.some((one) => {
    if (one === best || one.value === best.value || (one.unit !== best.unit && one.unit !== null && one.form !== 'bare') || one.sign === '±' || one.sign.includes('/')) return false;
    const between = one.start > best.start ? text.slice(best.end, one.start) : text.slice(one.end, best.start);
    const joined = JOINED.test(between) || (one.start > best.start && between.trim() === '' && one.sign === '-');
    // behind a comma a bare number is something else (`10k, 5`), before it a value without its unit (`1000, 2200 uF`)
    return joined && !(one.start > best.start && one.form === 'bare');
  });
}

/** Letters and marks that may mean another value; `1,000` does not, for nobody writes such a decimal. */
function otherDoubt(best: Candidate, text: string): Doubt | null {
  const { other, start, end } = best.quantity;
  if (other === null || /,000/.test(text.slice(start, end))) return null;
  return { field: 'value', code: 'two-readings', args: { text: text.slice(start, end), taken: best.value, other }, span: [start, end] };
}

function interpret(quantity: Quantity, kind: Kind, unit: string, cell: Cell, index: number): Candidate | null {
  const plain = { quantity, letter: quantity.letter, doubt: null };
  if (quantity.sign === '±' || quantity.sign.startsWith('+')) return null;
  if (quantity.unit === unit && quantity.note !== 'out' && quantity.note !== 'other') {
    return { value: quantity.value, rank: 2, ...plain };
  }
  const expected = cell.field === 'value' || cell.field === 'text' || cell.field === 'partNumber';
  if (quantity.form === 'rkm' && quantity.unit === 'ohm' && (unit === 'F' || unit === 'H')) return expected ? figures(quantity, cell, unit) : null;
  if (quantity.unit !== null) return null;
  if (quantity.note === 'lost') return lost(quantity, cell, unit);
  if (quantity.form === 'bare') return bareValue(quantity, kind, unit, cell, index);
  if (quantity.note === 'pins' && unit !== 'F') return null;
  const fits = { ohm: quantity.power >= 0 || quantity.power === -3, F: quantity.power < 0, H: quantity.power < 0, Hz: quantity.power >= 3, V: false, A: quantity.power === -3 }[unit] ?? false;
  if (fits) return { value: quantity.value, rank: 1, ...plain, doubt: quantity.power === -3 && quantity.form === 'prefix' && unit !== 'A' ? assumed(quantity, cell, unit) : null };
  return unit === 'F' && expected && quantity.power >= 3 ? figures(quantity, cell, unit) : null;
}

/** `4700\ufffd`: the mark that an encoding destroyed was Ω on a resistor, µ on a capacitor. */
function lost(quantity: Quantity, cell: Cell, unit: string): Candidate | null {
  if (unit !== 'ohm' && unit !== 'F' && unit !== 'H') return null;
  const value = unit === 'ohm' ? quantity.value : multiply(quantity.value, MICRO);
  return { value, rank: 1, quantity, letter: null, doubt: assumed(quantity, cell, unit) };
}

function assumed(quantity: Quantity, cell: Cell, unit: string): Doubt {
  return { field: 'value', code: 'unit-assumed', args: { text: cell.text.slice(quantity.start, quantity.end), unit }, span: [quantity.start, quantity.end] };
}

const PICO = decimal('1e-12');
const MICRO = decimal('1e-6');
const MEGA = decimal('1e6');
const KILO = decimal('1e3');

/** Marks as printed on the part: `104`, `104K`, `4R7`, `47K` on a capacitor (pF), `101`, `4R7` on an inductor (µH). */
function figures(quantity: Quantity, cell: Cell, unit: string): Candidate | null {
  const written = cell.text.slice(quantity.start, quantity.end).toUpperCase();
  const match = /^(\d*R\d+|\d{2,3})([BCDFGJKMZ])?$/.exec(written);
  if (!match) return null;
  const marks = match[1] ?? '';
  const isCode = /^\d{3}$/.test(marks) && !marks.endsWith('0');
  const read = isCode || marks.includes('R') ? readFigures(marks, unit === 'F') : decimal(marks);
  if (read === null) return null;
  const value = multiply(read, unit === 'F' ? PICO : MICRO);
  // 104, 473 are no values of any series, so the code is the only reading; 100, 47K, 4R7 have another
  const doubt: Doubt | null = isCode ? null : { field: 'value', code: 'code-assumed', args: { text: written, taken: value, other: quantity.value }, span: [quantity.start, quantity.end] };
  return { value, rank: isCode ? 1 : 0, quantity, letter: match[2] ?? null, doubt };
}

/** A number without unit or prefix: only where a value stands alone, in the unit that its kind is written in. */
function bareValue(quantity: Quantity, kind: Kind, unit: string, cell: Cell, index: number): Candidate | null {
  if (index > 0 || !standsAlone(quantity, cell)) return null;
  const written = cell.text.slice(quantity.start, quantity.end);
  const doubt = assumed(quantity, cell, unit);
  const of = (value: Decimal, sure: boolean): Candidate => ({ value, rank: 0, quantity, letter: null, doubt: sure ? null : doubt });
  const number = Number(quantity.value);
  if (unit === 'ohm') return of(quantity.value, /^\d+$/.test(written) && cell.field === 'value' && kind !== 'ferrite');
  if (unit === 'F' || unit === 'H') {
    const code = figures(quantity, cell, unit);
    if (code && code.rank === 1) return code;
    if (unit === 'H') return of(multiply(quantity.value, MICRO), false);
    return of(multiply(quantity.value, number >= 10 && Number.isInteger(number) ? PICO : MICRO), false);
  }
  if (unit === 'Hz') return number >= 20000 ? of(quantity.value, true) : of(multiply(quantity.value, quantity.value === decimal('32.768') ? KILO : MEGA), false);
  return unit === 'A' || unit === 'V' ? (cell.field === 'value' ? of(quantity.value, false) : null) : null;
}

function standsAlone(quantity: Quantity, cell: Cell): boolean {
  const before = cell.atoms.filter((atom) => atom.end <= quantity.start);
  const unknown = cell.atoms.filter((atom) => atom.type === 'unknown');
  if (cell.field === 'value') return before.every((atom) => atom.type === 'word') && unknown.length === 0 && !/[-/][A-Za-z]|\d-\d|\d\/\d/.test(cell.text);
  const nearest = before[before.length - 1];
  return (cell.field === 'text' || cell.field === 'description') && nearest?.type === 'word' && nearest.meaning.kinds.length > 0 && quantity.start - nearest.end <= 1 && !/^\s*(?:x|×|pcs|st)/i.test(cell.text.slice(quantity.end));
}

/** `104K`, `4K7F`, `12pJ`: the letter behind the value is its tolerance. */
function letterTolerance(candidate: Candidate, kind: Kind): Fact[] {
  if (candidate.letter === null || (kind !== 'capacitor' && kind !== 'resistor' && kind !== 'inductor')) return [];
  const tolerance = readToleranceLetter(candidate.letter, kind === 'capacitor' ? candidate.value : null);
  return tolerance ? toleranceFacts(tolerance.low, tolerance.high, tolerance.unit) : [];
}

export function toleranceFacts(low: Decimal, high: Decimal, unit: string): Fact[] {
  const fact = (key: FactKey, value: Decimal): Fact => ({ key, value, unit, origin: 'stated' });
  return [fact('tolerance-low', low), fact('tolerance-high', high)];
}
