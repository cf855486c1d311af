import { decimal, multiply, type Decimal } from '#core/quantity/decimal.ts';
import { readFigures } from '#core/quantity/mark.ts';
import type { Quantity } from '#core/quantity/quantity.ts';
import { writeQuantity } from '#core/quantity/write-quantity.ts';
import type { Cell } from './cell.ts';
import type { Doubt } from './doubt.ts';
import type { Kind } from './part.ts';

/** One reading of a number as the value of the part. */
export interface Candidate {
  readonly value: Decimal;
  /** 2 with its unit, 1 with a prefix or letter, 0 a bare number or printed code */
  readonly rank: number;
  readonly quantity: Quantity;
  readonly letter: string | null;
  readonly doubt: Doubt | null;
}

/** A quantity of a cell as the value of a part of this kind, in the unit of that kind; null where it is something else. */
export function interpretValue(quantity: Quantity, kind: Kind, unit: string, cell: Cell, index: number): Candidate | null {
  const plain = { quantity, letter: quantity.letter, doubt: null };
  if (quantity.sign === '±' || quantity.sign.startsWith('+')) return null;
  if (quantity.unit === unit && quantity.note !== 'out' && quantity.note !== 'other') {
    return { value: quantity.value, rank: 2, ...plain };
  }
  const expected = cell.field === 'value' || cell.field === 'text' || cell.field === 'partNumber';
  if (quantity.form === 'rkm' && quantity.unit === 'ohm' && (unit === 'F' || unit === 'H'))
    return expected ? figures(quantity, cell, unit) : null;
  if (quantity.unit !== null) return null;
  if (quantity.note === 'lost') return lost(quantity, cell, unit);
  if (quantity.form === 'bare') return bareValue(quantity, kind, unit, cell, index);
  if (quantity.note === 'pins' && unit !== 'F') return null;
  const fits =
    {
      ohm: quantity.power >= 0 || quantity.power === -3,
      F: quantity.power < 0,
      H: quantity.power < 0,
      Hz: quantity.power >= 3,
      V: false,
      A: quantity.power === -3,
    }[unit] ?? false;
  // `1M0` of an inductor: M is milli with henry where nothing has lower case
  if (unit === 'H' && quantity.form === 'rkm' && quantity.power === 6)
    return { value: multiply(quantity.value, NANO), rank: 1, ...plain };
  if (fits)
    return {
      value: quantity.value,
      rank: 1,
      ...plain,
      doubt: quantity.power === -3 && quantity.form === 'prefix' && unit !== 'A' ? assumed(quantity, cell, unit) : null,
    };
  return (unit === 'F' || unit === 'H') && expected && quantity.power >= 3 ? figures(quantity, cell, unit) : null;
}

/** `4700\ufffd`: the mark that an encoding destroyed was Ω on a resistor, µ on a capacitor. */
function lost(quantity: Quantity, cell: Cell, unit: string): Candidate | null {
  if (unit !== 'ohm' && unit !== 'F' && unit !== 'H') return null;
  const value = unit === 'ohm' ? quantity.value : multiply(quantity.value, MICRO);
  return { value, rank: 1, quantity, letter: null, doubt: assumed(quantity, cell, unit) };
}

function assumed(quantity: Quantity, cell: Cell, unit: string): Doubt {
  return {
    field: 'value',
    code: 'unit-assumed',
    args: { text: cell.text.slice(quantity.start, quantity.end), unit },
    span: [quantity.start, quantity.end],
  };
}

const PICO = decimal('1e-12');
const NANO = decimal('1e-9');
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
  const otherValue = otherReading(quantity, unit);
  // 104, 473 are no values of any series, so the code is the only reading; 100, 47K, 4R7 have another
  const doubt: Doubt | null = isCode
    ? null
    : {
        field: 'value',
        code: 'code-assumed',
        args: { text: written, taken: writeQuantity(value, unit), other: writeQuantity(otherValue, unit) },
        span: [quantity.start, quantity.end],
      };
  return { value, rank: isCode ? 1 : 0, quantity, letter: match[2] ?? null, doubt };
}

/** The same letters as a prefix; a capital M of henry is milli where nothing has lower case. */
function otherReading({ power, value }: Quantity, unit: string): Decimal {
  if (power === 0) return multiply(value, unit === 'F' ? PICO : MICRO);
  return unit === 'H' && power === 6 ? multiply(value, NANO) : value;
}

/** A number without unit or prefix: only where a value stands alone, in the unit that its kind is written in. */
function bareValue(quantity: Quantity, kind: Kind, unit: string, cell: Cell, index: number): Candidate | null {
  if (index > 0 || !standsAlone(quantity, cell)) return null;
  const written = cell.text.slice(quantity.start, quantity.end);
  // `7805`, `317`: a type number, no voltage
  if (kind === 'regulator' && /^\d{3,}$/.test(written)) return null;
  const doubt = assumed(quantity, cell, unit);
  const of = (value: Decimal, sure: boolean): Candidate => ({
    value,
    rank: 0,
    quantity,
    letter: null,
    doubt: sure ? null : doubt,
  });
  // `1E-07`: a program or spreadsheet wrote it, in the unit without prefix
  if (/\d[eE][+-]?\d/.test(written)) return of(quantity.value, false);
  const number = Number(quantity.value);
  if (unit === 'ohm') return of(quantity.value, /^\d+$/.test(written) && cell.field === 'value' && kind !== 'ferrite');
  if (unit === 'F' || unit === 'H') {
    const code = figures(quantity, cell, unit);
    if (code && code.rank === 1) return code;
    if (unit === 'H') return of(multiply(quantity.value, MICRO), false);
    return of(multiply(quantity.value, number >= 10 && Number.isInteger(number) ? PICO : MICRO), false);
  }
  if (unit === 'Hz')
    return number >= 20000
      ? of(quantity.value, true)
      : of(multiply(quantity.value, quantity.value === decimal('32.768') ? KILO : MEGA), false);
  return unit === 'A' || unit === 'V' ? (cell.field === 'value' ? of(quantity.value, false) : null) : null;
}

function standsAlone(quantity: Quantity, cell: Cell): boolean {
  const before = cell.atoms.filter((atom) => atom.end <= quantity.start);
  const unknown = cell.atoms.filter((atom) => atom.type === 'unknown');
  if (cell.field === 'value')
    return before.every((atom) => atom.type === 'word') && unknown.length === 0 && !/[-/][A-Za-z]|\d-\d|\d\/\d/.test(cell.text);
  const nearest = before[before.length - 1];
  return (
    (cell.field === 'text' || cell.field === 'description') &&
    nearest?.type === 'word' &&
    nearest.meaning.kinds.length > 0 &&
    quantity.start - nearest.end <= 1 &&
    !/^\s*(?:x|×|pcs|st)/i.test(cell.text.slice(quantity.end))
  );
}
