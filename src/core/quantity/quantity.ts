import { decimal, fromDigitText, multiply, shift, type Decimal } from './decimal.ts';
import { NUMBER_PATTERN, readNumber } from './number.ts';
import { readSuffix, type Suffix } from './suffix.ts';

/** A number in a text with what stands beside it. Values are in the base unit; a fraction for percent. */
export interface Quantity {
  readonly value: Decimal;
  /** ohm, F, H, Hz, V, A, W, fraction, ppm, m, …; null where the text has no unit (`4k7`, `47`) */
  readonly unit: string | null;
  /** how it is written: a number alone, with a prefix alone (`10k`), with a letter for the point (`4k7`), or with a unit */
  readonly form: 'bare' | 'prefix' | 'rkm' | 'unit';
  readonly note: string | null;
  /** power of ten that the prefix or letter stands for */
  readonly power: number;
  /** a letter glued behind that may be a tolerance: `4K7F` */
  readonly letter: string | null;
  readonly sign: string;
  /** another value that the same marks may mean */
  readonly other: Decimal | null;
  readonly start: number;
  readonly end: number;
}

const FRACTION = /(?:(\d+)\/(\d+)|([½¼¾⅛]))\s?-?[wW](?:att|atts|ATT|ATTS)?(?![A-Za-z0-9])/y;
const VULGAR: Readonly<Record<string, readonly [over: string, under: string]>> = {
  '½': ['1', '2'],
  '¼': ['1', '4'],
  '¾': ['3', '4'],
  '⅛': ['1', '8'],
};
/** One part of so many, by the figure below the line. Thirds and sixths of a watt as catalogues print them. */
const PARTS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    2: '0.5',
    3: '0.333',
    4: '0.25',
    5: '0.2',
    6: '0.1667',
    8: '0.125',
    10: '0.1',
    16: '0.0625',
    20: '0.05',
    32: '0.03125',
  }),
);
const RKM =
  /(\d{1,4})([pnuµmkKMGTRrLVvUNPE])(\d{1,3})(?:\s?(Ω|[oO]hms?|OHMS?|[FHVA](?:z|Z)?))?([BCDFGJKMZ](?![A-Za-z]))?(?![\d.]|[A-Za-z]{1}[A-Za-z0-9])/y;
const RKM_LEADING = /([RrpnuLkK])(\d+)([BCDFGJKMZ])?(?![A-Za-z0-9.])/y;
const PLAIN = new RegExp(
  String.raw`(±|\+\/-\s?|\+-|[+-])?\s?(${NUMBER_PATTERN})(?:([ \-_]?)(ppm\/°?[CK]|K\/W|[A-Za-zΩ%°℃µ"~=オームピン極\u3380-\u33dd\ufffd]+)|([ -]?)(%|"))?`,
  'y',
);
const RKM_POWERS: Readonly<Record<string, number>> = {
  p: -12,
  n: -9,
  u: -6,
  µ: -6,
  m: -3,
  k: 3,
  K: 3,
  M: 6,
  G: 9,
  T: 12,
  R: 0,
  r: 0,
  E: 0,
  L: -3,
  V: 0,
  v: 0,
  U: -6,
  N: -9,
  P: -12,
};

/** The quantity that begins at `start` of a plain text, or null. `"10 kOhm"` → 1e4 ohm; `"4k7"` → 47e2; `"1/4W"` → 0.25 W. */
export function quantityAt(text: string, start: number): Quantity | null {
  return fractionAt(text, start) ?? rkmAt(text, start) ?? plainAt(text, start);
}

function fractionAt(text: string, start: number): Quantity | null {
  FRACTION.lastIndex = start;
  const match = FRACTION.exec(text);
  if (!match) return null;
  const [over = '', under = ''] = VULGAR[match[3] ?? ''] ?? match.slice(1);
  const part = PARTS.get(under);
  if (part === undefined) return null;
  return quantity({
    value: multiply(decimal(over), decimal(part)),
    unit: 'W',
    form: 'unit',
    start,
    end: start + match[0].length,
  });
}

function rkmAt(text: string, start: number): Quantity | null {
  RKM.lastIndex = start;
  const match = RKM.exec(text);
  if (!match) return null;
  const [all, whole = '', letter = '', part = '', unit = null, tolerance = null] = match;
  const value = fromDigitText(whole + part, (RKM_POWERS[letter] ?? 0) - part.length);
  const suffix = unit === null ? null : readSuffix(unit);
  // `2k2F`: farads never go with a letter of resistance, so that F is the tolerance
  if (unit === 'F' && /[kKMGRr]/.test(letter))
    return quantity({
      value,
      unit: null,
      form: 'rkm',
      power: RKM_POWERS[letter] ?? 0,
      letter: 'F',
      start,
      end: start + all.length,
    });
  const own = letter === 'R' || letter === 'r' ? 'ohm' : letter === 'V' || letter === 'v' ? 'V' : null;
  return quantity({
    value,
    unit: suffix?.unit ?? own,
    form: 'rkm',
    power: RKM_POWERS[letter] ?? 0,
    letter: tolerance,
    start,
    end: start + all.length,
  });
}

/** `R47`, `n10`, `k47`: a letter where the point is, at the front. Asked only where a value is expected. */
export function leadingRkmAt(text: string, start: number): Quantity | null {
  RKM_LEADING.lastIndex = start;
  const match = RKM_LEADING.exec(text);
  if (!match) return null;
  const [all, letter = '', part = '', tolerance = null] = match;
  const value = fromDigitText(part, (RKM_POWERS[letter] ?? 0) - part.length);
  return quantity({
    value,
    unit: letter === 'R' || letter === 'r' ? 'ohm' : null,
    form: 'rkm',
    power: RKM_POWERS[letter] ?? 0,
    letter: tolerance,
    start,
    end: start + all.length,
  });
}

function plainAt(text: string, start: number): Quantity | null {
  PLAIN.lastIndex = start;
  const match = PLAIN.exec(text);
  if (!match) return null;
  const [all, sign = '', number = '', gap = '', letters = '', , mark = ''] = match;
  const reading = readNumber(number);
  if (!reading) return null;
  const after = letters || mark;
  const bareEnd = start + all.length - after.length - (match[3] ?? match[5] ?? '').length;
  const base = { value: reading.value, other: reading.other, sign: sign.trim(), start };
  if (!after) return quantity({ ...base, form: 'bare', end: bareEnd });
  const taken = suffixOf(text, after, gap, start + all.length);
  if (!taken) return quantity({ ...base, form: 'bare', end: bareEnd });
  return withSuffix(base, taken.suffix, taken.letter, taken.end);
}

interface Taken {
  readonly suffix: Suffix;
  readonly letter: string | null;
  readonly end: number;
}

/** The letters must end where a word ends; a prefix alone must stand close to its number, or before a unit: `10 k Ohm`. */
function suffixOf(text: string, letters: string, gap: string, end: number): Taken | null {
  const next = text[end] ?? ' ';
  if (/[0-9]/.test(next)) return null;
  const split = splitUnit(text, letters, end);
  if (split) return split;
  const suffix = readSuffix(letters);
  if (
    suffix &&
    gap &&
    (suffix.unit === null ? gap.trim() !== '' || !/^(?:[mM]eg|MEG|[mM]ega|MEGA|[kKµu])$/.test(letters) : LONELY.test(letters))
  )
    return null;
  if (suffix) return withCurrent(text, suffix, end);
  const glued = /^(.+)([BCDFGJKMZ])$/.exec(letters);
  const inner = glued ? readSuffix(glued[1] ?? '') : null;
  return inner && glued && inner.unit !== 'other' && !gap ? { suffix: inner, letter: glued[2] ?? null, end } : null;
}

/** Letters too common to be a unit when they stand apart from the number. */
const LONELY = /^(?:[afhgsbcxCBSGP]|in|th|st|nd|rd|FD|Hy)$/;
const AC_DC = /\s?(ac|dc|AC|DC)(?![A-Za-z0-9/-])/y;

/** `24 V dc`, `250 V AC`. */
function withCurrent(text: string, suffix: Suffix, end: number): Taken {
  AC_DC.lastIndex = end;
  const match = suffix.unit === 'V' && suffix.note === null ? AC_DC.exec(text) : null;
  return match
    ? { suffix: { ...suffix, note: (match[1] ?? '').toLowerCase() }, letter: null, end: end + match[0].length }
    : { suffix, letter: null, end };
}

const UNIT_WORD = /\s?[-_]?(Ω|ohms?|farads?|henry|henries|volts?|amps?|amperes?|watts?|Hz|F|H|V|A|W)(?![A-Za-z0-9])/iy;

/** `10K OHM`, `4.7 k Ω`, `10 micro F`: the unit in a word of its own. */
function splitUnit(text: string, letters: string, end: number): Taken | null {
  const prefix = readSuffix(letters);
  if (!prefix || prefix.unit !== null) return null;
  UNIT_WORD.lastIndex = end;
  const word = UNIT_WORD.exec(text);
  if (!word) return null;
  const unit = readSuffix(word[1] ?? '');
  if (!unit || (!/^(?:Ω|ohms?)$/i.test(word[1] ?? '') && letters.length < 3)) return null;
  const power = letters === 'm' && unit.unit === 'ohm' ? -3 : prefix.power;
  return { suffix: { ...unit, power }, letter: null, end: end + word[0].length };
}

type Base = Pick<Quantity, 'value' | 'other' | 'sign' | 'start'>;

function withSuffix(base: Base, suffix: Suffix, letter: string | null, end: number): Quantity {
  const power = suffix.unit === 'fraction' ? -2 : suffix.power;
  const other = base.other ? shift(base.other, power) : suffix.other === null ? null : shift(base.value, suffix.other);
  return {
    ...base,
    value: shift(base.value, power),
    other,
    unit: suffix.unit,
    note: suffix.note,
    power: suffix.power,
    letter,
    end,
    form: suffix.unit === null ? 'prefix' : 'unit',
  };
}

function quantity(some: Partial<Quantity> & Pick<Quantity, 'value' | 'start' | 'end' | 'form'>): Quantity {
  return { unit: null, note: null, power: 0, letter: null, sign: '', other: null, ...some };
}
