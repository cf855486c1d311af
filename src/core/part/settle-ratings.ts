import { decimal, multiply, parseDecimal, type Decimal } from '#core/quantity/decimal.ts';
import { quantityAt, type Quantity } from '#core/quantity/quantity.ts';
import { writeQuantity } from '#core/quantity/write-quantity.ts';
import { readToleranceLetter } from '#core/quantity/tolerance.ts';
import type { Cell } from './cell.ts';
import { related } from './decide-kind.ts';
import type { Doubt } from './doubt.ts';
import type { ReadField } from './hints.ts';
import { KIND_ROWS } from './kinds.data.ts';
import type { Fact, Kind } from './part.ts';
import { toleranceFacts, type Settled } from './settle-value.ts';

/** Kinds whose value cell names what they do on this board (`12V`, `USB`), not what they are. */
const NAMED_BY_USE: ReadonlySet<Kind> = new Set([
  'connector',
  'header',
  'led',
  'testpoint',
  'switch',
  'jumper',
  'ic',
  'module',
  'sensor',
  'display',
  'regulator',
]);

const RATINGS: readonly (readonly [key: 'voltage' | 'power' | 'current', unit: string])[] = [
  ['voltage', 'V'],
  ['power', 'W'],
  ['current', 'A'],
];

/** Voltage, power and current, as far as this kind has them: its own column first, then the value, then the description. */
export function settleRatings(kind: Kind, cells: readonly Cell[]): Settled {
  const facts: Fact[] = [];
  const doubts: Doubt[] = [];
  for (const [key, unit] of RATINGS) {
    const strip = kind === 'led' && key === 'voltage' && cells.some((cell) => /strip|streifen/i.test(cell.text));
    if (!strip && !KIND_ROWS[kind].facts.includes(key) && !cells.some((cell) => cell.field === key)) continue;
    const found = rating(kind, cells, key, unit);
    if (!found) continue;
    facts.push({ key, value: found.quantity.value, unit, origin: 'stated' });
    const current = key === 'voltage' ? kindOfVoltage(found.quantity, cells) : null;
    if (current !== null) facts.push({ key: 'voltage-kind', value: current, unit: null, origin: 'stated' });
    if (found.doubt) doubts.push(found.doubt);
  }
  return { facts, doubts };
}

const MAINS = /^\s*(?:V\s?)?(?:AC\s?|~\s?)?(?:mains|netz(?:spannung)?|secteur|netspanning)(?![a-z])/i;

/** `275 V~` alternating, `250 VDC` direct, `230 V mains` the mains: three ratings, of which none answers for another. */
function kindOfVoltage(quantity: Quantity, cells: readonly Cell[]): 'ac' | 'dc' | 'mains' | null {
  const atMains = cells.some(
    ({ text, atoms }) =>
      MAINS.test(text.slice(quantity.end)) && atoms.some((atom) => atom.type === 'quantity' && atom.quantity === quantity),
  );
  if (atMains) return 'mains';
  return quantity.note === 'ac' || quantity.note === 'dc' ? quantity.note : null;
}

/** What stands above is no rating of a part in a bag: `900KV` is the speed of a motor. */
const MOST: Readonly<Record<'voltage' | 'power' | 'current', number>> = { voltage: 50_000, power: 5000, current: 5000 };

interface Rating {
  readonly quantity: Quantity;
  readonly doubt: Doubt | null;
}

function rating(kind: Kind, cells: readonly Cell[], key: 'voltage' | 'power' | 'current', unit: string): Rating | null {
  const own = cells.find((cell) => cell.field === key);
  const fromOwn = own ? inColumn(own, key, unit) : null;
  if (fromOwn) return { quantity: fromOwn, doubt: null };
  for (const cell of cells) {
    if (!isRead(cell.field, kind, key) || !speaksOf(cell, kind)) continue;
    const found = inText(cell, key, unit) ?? (key === 'voltage' && kind === 'capacitor' ? strokeVoltage(cell) : null);
    if (found) return found;
  }
  return null;
}

/** Rated voltages of capacitors (R5 and R10 series as makers offer them). */
const RATED: ReadonlySet<string> = new Set(
  ['4', '6.3', '10', '16', '25', '35', '50', '63', '80', '100', '160', '200', '250', '400', '450', '630'].map(decimal),
);

/** `220u/16`: behind the stroke stands the voltage without its unit. */
function strokeVoltage(cell: Cell): Rating | null {
  if (cell.field !== 'value' && cell.field !== 'text') return null;
  const [first, second] = cell.atoms;
  if (
    first?.type !== 'quantity' ||
    second?.type !== 'quantity' ||
    second.quantity.form !== 'bare' ||
    !RATED.has(second.quantity.value)
  )
    return null;
  if (first.quantity.power >= 0 || cell.text.slice(first.end, second.start).trim() !== '/') return null;
  return {
    quantity: second.quantity,
    doubt: { field: 'voltage', code: 'unit-assumed', args: { text: cell.text.slice(second.start, second.end), unit: 'V' } },
  };
}

/** A heading states a rating only for the kind that it names: `Resistors 1/4 W`, not `Supply 12 V`. */
function speaksOf(cell: Cell, kind: Kind): boolean {
  return (
    cell.field !== 'context' ||
    cell.atoms.some((atom) => atom.type === 'word' && atom.meaning.kinds.some((one) => related(one, kind)))
  );
}

function isRead(field: ReadField | 'text', kind: Kind, key: string): boolean {
  if (field === 'value') return !NAMED_BY_USE.has(kind);
  if (field === 'footprint' || field === 'package' || field === 'device') return kind === 'capacitor' && key === 'voltage';
  return (
    field === 'text' ||
    field === 'description' ||
    field === 'category' ||
    field === 'context' ||
    field === 'technology' ||
    field === 'dielectric' ||
    (field === 'partNumber' && key === 'voltage')
  );
}

const FRACTION = /^\s*(\d+)\s?\/\s?(\d+)\s*$/;

/** In a column of its own a number needs no unit: `50` under `Voltage`, `1/4` under `Power`. */
function inColumn(cell: Cell, key: string, unit: string): Quantity | null {
  const fraction = key === 'power' ? FRACTION.exec(cell.text) : null;
  if (fraction) return quantityAt(`${fraction[1]}/${fraction[2]}W`, 0);
  const quantities = cell.atoms.flatMap((atom) => (atom.type === 'quantity' ? [atom.quantity] : []));
  const found = cell.atoms.find(
    (atom) =>
      atom.type === 'quantity' &&
      (atom.quantity.unit === unit || atom.quantity.form === 'bare') &&
      !ranged(cell.text, quantities, atom.quantity),
  );
  if (found?.type === 'quantity') return found.quantity;
  const size = cell.atoms.find((atom) => atom.type === 'package' && atom.reading.bare === true);
  const number = size ? parseDecimal(cell.text.slice(size.start, size.end)) : null;
  return size && number
    ? {
        value: number,
        unit,
        form: 'bare',
        note: null,
        power: 0,
        letter: null,
        sign: '',
        other: null,
        start: size.start,
        end: size.end,
      }
    : null;
}

function inText(cell: Cell, key: 'voltage' | 'power' | 'current', unit: string): Rating | null {
  const quantities = cell.atoms.flatMap((atom) => (atom.type === 'quantity' ? [atom.quantity] : []));
  const fits = quantities.filter(
    (one) =>
      one.unit === unit &&
      one.form !== 'rkm' &&
      one.note !== 'out' &&
      one.note !== 'other' &&
      !isCondition(cell.text, one) &&
      !ranged(cell.text, quantities, one),
  );
  const [first] = fits;
  if (!first || Number(first.value) === 0 || Number(first.value) > MOST[key]) return null;
  const against =
    key === 'voltage'
      ? fits.find((one) => one.value !== first.value && one.note === first.note && first.note !== 'rating')
      : undefined;
  const doubt: Doubt | null = against
    ? {
        field: key,
        code: 'two-readings',
        args: { text: cell.text.trim(), taken: writeQuantity(first.value, unit), other: writeQuantity(against.value, unit) },
      }
    : null;
  return { quantity: first, doubt };
}

/** `680 mΩ @ 10 V` is the condition of a measurement, `12 V input` the place where it is used. */
function isCondition(text: string, quantity: Quantity): boolean {
  if (
    quantity.unit === 'V' &&
    /^\s*(?:in(?:put)?|out(?:put)?|rail|supply|bus|line|net|bias|logic|tolerant|level)\b|^[\s-]*(?:kompatib|compatib|Logik|Pegel|Eingang|Ausgang)/i.test(
      text.slice(quantity.end),
    )
  )
    return true;
  return /(?:@|\bat)\s*$/.test(text.slice(0, quantity.start));
}

function ranged(text: string, quantities: readonly Quantity[], one: Quantity): boolean {
  if (/^[\s-]*(?:-|~|…|\.{2,3}|to|bis)[\s~-]*\d/.test(text.slice(one.end))) return true;
  return quantities.some(
    (other) =>
      other !== one &&
      other.end <= one.start &&
      (other.form === 'bare' || other.unit === one.unit) &&
      /^[\s-]*(?:-|~|…|\.{2,3}|to|bis)[\s~-]*$/.test(text.slice(other.end, one.start)),
  );
}

const HUNDREDTH = decimal('0.01');
const MILLIONTH = decimal('1e-6');

/** Tolerance as stated: `±5 %`, `+80/-20 %`, `±0.5 pF`, a bare number or a letter in its own column; ppm for crystals. */
export function settleTolerance(kind: Kind, cells: readonly Cell[], value: Decimal | null): Fact[] {
  const own = cells.find((cell) => cell.field === 'tolerance');
  if (own) {
    const facts = ownTolerance(own, kind, value);
    if (facts.length) return facts;
  }
  if (!own && !KIND_ROWS[kind].facts.includes('tolerance-low')) return [];
  for (const cell of cells) {
    if (cell.field === 'footprint' || cell.field === 'package' || cell.field === 'supplierNumber' || !speaksOf(cell, kind))
      continue;
    const facts = toleranceIn(cell, kind);
    if (facts.length) return facts;
  }
  return [];
}

function ownTolerance(cell: Cell, kind: Kind, value: Decimal | null): Fact[] {
  const stated = toleranceIn(cell, kind);
  if (stated.length) return stated;
  const letter = /^\s*([A-Z])\s*$/.exec(cell.text)?.[1];
  const tolerance = letter === undefined ? null : readToleranceLetter(letter, kind === 'capacitor' ? value : null);
  if (tolerance) return toleranceFacts(tolerance.low, tolerance.high, tolerance.unit);
  const number = cell.atoms.find((atom) => atom.type === 'quantity' && atom.quantity.form === 'bare');
  if (number?.type !== 'quantity' || Number(number.quantity.value) === 0) return [];
  const fraction = multiply(number.quantity.value, HUNDREDTH);
  return toleranceFacts(fraction, fraction, 'fraction');
}

function toleranceIn(cell: Cell, kind: Kind): Fact[] {
  for (const atom of cell.atoms) {
    if (atom.type === 'asymmetric') return asymmetric(atom);
    if (atom.type !== 'quantity') continue;
    const { quantity } = atom;
    if (quantity.unit === 'fraction' && Number(quantity.value) > 0 && !/[<>≤≥~]\s*$/.test(cell.text.slice(0, quantity.start)))
      return toleranceFacts(quantity.value, quantity.value, 'fraction');
    if (quantity.unit === 'ppm' && (kind === 'crystal' || kind === 'oscillator')) {
      const fraction = multiply(quantity.value, MILLIONTH);
      return toleranceFacts(fraction, fraction, 'fraction');
    }
    const signed = quantity.sign === '±' || quantity.sign === '+/-' || quantity.sign === '+-';
    if (signed && quantity.unit === KIND_ROWS[kind].value && quantity.unit !== undefined && quantity.unit !== null)
      return toleranceFacts(quantity.value, quantity.value, quantity.unit);
  }
  return [];
}

function asymmetric(atom: Extract<Cell['atoms'][number], { type: 'asymmetric' }>): Fact[] {
  const scale = atom.unit === '%' ? HUNDREDTH : { pF: decimal('1e-12'), nF: decimal('1e-9'), uF: MILLIONTH }[atom.unit];
  if (scale === undefined) return [];
  return toleranceFacts(
    multiply(decimal(atom.low), scale),
    multiply(decimal(atom.high), scale),
    atom.unit === '%' ? 'fraction' : 'F',
  );
}
