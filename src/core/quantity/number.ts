import { fromDigitText, shift, type Decimal } from './decimal.ts';

export interface NumberReading {
  readonly value: Decimal;
  /** the same marks may also be read so, e.g. `1,500` as 1.5 */
  readonly other: Decimal | null;
}

const THOUSANDS = String.raw`\d{1,3}(?:(?:[ ']\d{3})+(?!\d)|(?:,\d{3}){2,}(?!\d))(?:[.,]\d+)?`;
/** `1.234,5` and `1,234.5`: two marks say which is which; so do points or commas that come twice: `1.000.000`. */
const TWO_MARKS = String.raw`\d{1,3}(?:\.\d{3})+,\d+|\d{1,3}(?:\.\d{3}){2,}(?!\d)|\d{1,3}(?:,\d{3})+\.\d+`;
/** `1e-9`, `1.5e3`, `1.00E-07` as programs and spreadsheets write. A capital E after whole figures may be ohms (`10E-5%`), so there two figures must follow. */
const POWER = String.raw`\d+[.,]\d+[eE][+-]?\d{1,2}(?![\d%])|\d+(?:e[+-]?\d{1,2}|E[+-]\d{2}|E[+-]\d(?=\s?[FH]))(?![\d.%])`;

/** Digits with points, commas, apostrophes or single blanks inside, or with a power of ten, as the pattern of one number. */
export const NUMBER_PATTERN = `${POWER}|${THOUSANDS}|${TWO_MARKS}|${String.raw`\d+(?:[.,]\d+)?|[.,]\d+`}`;

/**
 * A number as people write it: `"4.7"`, `"4,7"` → 4.7, `"1 000"`, `"1'000"` → 1000, `"1,000,000"` → a million, `".1"` → 0.1,
 * `"1.234,5"` → 1234.5, `"1e-9"`.
 * A single comma before exactly three digits is a thousands mark where it can be one (`"1,000"`), and the other reading is
 * given as well; a single point is a decimal point (`"3.000"` MHz). Common practice, no source.
 */
export function readNumber(text: string): NumberReading | null {
  const at = text.search(/[eE]/);
  if (at > 0) {
    const mantissa = readNumber(text.slice(0, at));
    return mantissa && { value: shift(mantissa.value, Number(text.slice(at + 1))), other: null };
  }
  const bare = text.replace(/[ ']/g, '');
  if (/^\d{1,3}(?:\.\d{3})+,\d+$|^\d{1,3}(?:\.\d{3}){2,}$/.test(bare)) {
    const value = digits(bare.replaceAll('.', '').replace(',', '.'));
    return value && { value, other: null };
  }
  const groups = /^\d{1,3}(?:,\d{3})+(\.\d+)?$/.exec(bare);
  if (groups && !bare.startsWith('0')) {
    const whole = digits(bare.replaceAll(',', ''));
    const single = /^\d+,\d{3}$/.test(bare);
    return whole && { value: whole, other: single ? digits(bare.replace(',', '.')) : null };
  }
  const value = digits(bare.replace(',', '.'));
  return value && { value, other: null };
}

function digits(text: string): Decimal | null {
  const match = /^(\d*)(?:\.(\d*))?$/.exec(text);
  const whole = match?.[1] ?? '';
  const part = match?.[2] ?? '';
  return match && (whole || part) ? fromDigitText(whole + part, -part.length) : null;
}
