import type { Decimal } from '#core/quantity/decimal.ts';
import type { Quantity } from '#core/quantity/quantity.ts';
import { writeQuantity } from '#core/quantity/write-quantity.ts';
import { readToleranceLetter } from '#core/quantity/tolerance.ts';
import type { Cell } from './cell.ts';
import type { Doubt } from './doubt.ts';
import { interpretValue, type Candidate } from './interpret-value.ts';
import { KIND_ROWS } from './kinds.data.ts';
import type { Fact, FactKey, Kind } from './part.ts';

export interface Settled {
  readonly facts: readonly Fact[];
  readonly doubts: readonly Doubt[];
}

type Read = Candidate & { readonly after: string };

const NOTHING: Settled = { facts: [], doubts: [] };

/** The value of a part of this kind, from the value cell, else the description, else the ordering code. */
export function settleValue(kind: Kind, cells: readonly Cell[]): Settled {
  const unit = KIND_ROWS[kind].value;
  if (unit === undefined) return NOTHING;
  const reads = cells
    .filter((cell) => cell.field !== 'footprint' && cell.field !== 'package' && cell.field !== 'context')
    .map((cell) => readInCell(cell, kind, unit));
  const stated = reads.filter((read) => read !== null);
  const decoded = decodedFacts(cells, kind);
  // as: a value fact holds a canonical decimal by construction
  const decodedValue = (decoded.find((fact) => fact.key === 'value')?.value ?? null) as Decimal | null;
  const taken = choose(stated, decodedValue);
  if (!taken)
    return {
      facts: decodedValue === null || stated.length ? [] : decoded.filter((fact) => fact.key === 'value'),
      doubts: stated.flatMap((read) => (read.doubt ? [read.doubt] : [])),
    };
  const doubts: Doubt[] = taken.doubt ? [taken.doubt] : [];
  const against = stated.find((read) => read.candidate && read.candidate.value !== taken.candidate.value);
  if (against?.candidate) doubts.push(conflict(taken.candidate.value, against.candidate.value, unit, against.place));
  else if (decodedValue !== null && decodedValue !== taken.candidate.value)
    doubts.push(conflict(taken.candidate.value, decodedValue, unit, 'partNumber'));
  const facts: Fact[] = [{ key: 'value', value: taken.candidate.value, unit, origin: 'stated' }];
  return { facts: [...facts, ...letterTolerance(taken.candidate, kind)], doubts };
}

function conflict(taken: Decimal, other: Decimal, unit: string, place: string): Doubt {
  return {
    field: 'value',
    code: 'conflict',
    args: { taken: writeQuantity(taken, unit), other: writeQuantity(other, unit), place },
  };
}

/** Facts that the first decoded ordering code of this kind gives. */
export function decodedFacts(cells: readonly Cell[], kind: Kind): readonly Fact[] {
  for (const cell of cells) for (const code of cell.codes) if (code.decoded && code.kind === kind) return code.decoded.facts;
  return [];
}

interface CellRead {
  readonly place: string;
  /** null where the cell holds a range or a list */
  readonly candidate: Read | null;
  readonly doubt: Doubt | null;
}

type Taken = CellRead & { readonly candidate: Read };

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
    const candidate = interpretValue(quantity, kind, unit, cell, index);
    return candidate ? [candidate] : [];
  });
  if (candidates.length === 0) return null;
  const rank = Math.max(...candidates.map((one) => one.rank));
  const best = candidates.find((one) => one.rank === rank);
  if (!best) return null;
  if (inRange(cell.text, quantities, best.quantity)) {
    return { place: cell.field, candidate: null, doubt: { field: 'value', code: 'range', args: { text: cell.text.trim() } } };
  }
  return {
    place: cell.field,
    candidate: { ...best, after: cell.text.slice(best.quantity.end) },
    doubt: best.doubt ?? otherDoubt(best, cell.text, unit),
  };
}

const JOINED = /^[\s-]*(?:-|~|…|\.{2,3}|to|bis|a|à|und|and|or|oder|et|ou|y|o|e|,|;|&)[\s~-]*$/i;
const BOUNDED =
  /(?:[<>≤≥]=?|kleiner(?: gleich| als)?|groesser(?: gleich| als)?|größer(?: gleich| als)?|less than|more than|bis(?: zu)?|zwischen|between|up to|unter|über|under|over|below|from|von)\s*$/i;

/** `100 k … 1 M`, `20-50 ohm`, `16 und 20 MHz`, `≤ 10 Ω`: no single value. */
function inRange(text: string, quantities: readonly Quantity[], best: Quantity): boolean {
  if (BOUNDED.test(text.slice(0, best.start)) || /^\s*~\s*\d/.test(text.slice(best.end))) return true;
  return quantities.some((one) => {
    if (
      one === best ||
      one.value === best.value ||
      (one.unit !== best.unit && one.unit !== null && one.form !== 'bare') ||
      one.sign === '±' ||
      one.sign.includes('/')
    )
      return false;
    const between = one.start > best.start ? text.slice(best.end, one.start) : text.slice(one.end, best.start);
    const joined = JOINED.test(between) || (one.start > best.start && between.trim() === '' && one.sign === '-');
    // behind a comma a bare number is something else (`10k, 5`), before it a value without its unit (`1000, 2200 uF`)
    return joined && !(one.start > best.start && one.form === 'bare');
  });
}

/** Letters and marks that may mean another value; `1,000` does not, for nobody writes such a decimal. */
function otherDoubt(best: Candidate, text: string, unit: string): Doubt | null {
  const { other, start, end } = best.quantity;
  if (other === null || /,000/.test(text.slice(start, end))) return null;
  return {
    field: 'value',
    code: 'two-readings',
    args: { text: text.slice(start, end), taken: writeQuantity(best.value, unit), other: writeQuantity(other, unit) },
    span: [start, end],
  };
}

/** `104K`, `4K7F`, `12pJ`, `2K2 J`: the letter behind the value is its tolerance. */
function letterTolerance(candidate: Read, kind: Kind): Fact[] {
  const letter = candidate.letter ?? /^\s+([BDFGJKM])\s*$/.exec(candidate.after)?.[1] ?? null;
  if (letter === null || (kind !== 'capacitor' && kind !== 'resistor' && kind !== 'inductor')) return [];
  const tolerance = readToleranceLetter(letter, kind === 'capacitor' ? candidate.value : null);
  return tolerance ? toleranceFacts(tolerance.low, tolerance.high, tolerance.unit) : [];
}

export function toleranceFacts(low: Decimal, high: Decimal, unit: string): Fact[] {
  const fact = (key: FactKey, value: Decimal): Fact => ({ key, value, unit, origin: 'stated' });
  return [fact('tolerance-low', low), fact('tolerance-high', high)];
}
