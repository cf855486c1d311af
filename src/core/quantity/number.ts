import { fromDigitText, type Decimal } from './decimal.ts';

export interface NumberReading {
  readonly value: Decimal;
  /** the same marks may also be read so, e.g. `1,500` as 1.5 */
  readonly other: Decimal | null;
}

/** Digits with points, commas, apostrophes or single blanks inside, as the pattern of one number. */
export const NUMBER_PATTERN = String.raw`\d{1,3}(?:(?:[ ']\d{3})+(?![\d])|(?:,\d{3}){2,}(?!\d))(?:[.,]\d+)?|\d+(?:[.,]\d+)?|[.,]\d+`;

/**
 * A number as people write it: `"4.7"`, `"4,7"` → 4.7, `"1 000"`, `"1'000"` → 1000, `"1,000,000"` → a million, `".1"` → 0.1.
 * A single comma before exactly three digits is a thousands mark where it can be one (`"1,000"`), and the other reading is
 * given as well; a single point is a decimal point (`"3.000"` MHz). Common practice, no source.
 */
export function readNumber(text: string): NumberReading | null {
  const bare = text.replace(/[ ']/g, '');
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
