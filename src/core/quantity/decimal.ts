/**
 * Exact decimals as text, so that equal values are equal strings and no stock or value is ever a rounded float.
 *
 * A `Decimal` is `<digits>e<exponent>`, digits without a trailing zero: 4700 is `47e2`, 100 n is `1e-7`, zero is `0e0`.
 */
export type Decimal = string & { readonly decimal: unique symbol };

export const ZERO = '0e0' as Decimal; // as: the brand is given only here and in `fromDigits`

const PLAIN = /^([+-]?)(\d*)(?:\.(\d*))?(?:[eE]([+-]?\d+))?$/;

/** `digits` × 10^`exponent`, in the one canonical spelling. */
export function fromDigits(digits: bigint, exponent: number): Decimal {
  if (digits === 0n) return ZERO;
  let whole = digits.toString();
  const zeros = /0+$/.exec(whole)?.[0].length ?? 0;
  if (zeros) whole = whole.slice(0, -zeros);
  return `${whole}e${exponent + zeros}` as Decimal;
}

/** Decimal digits as text × 10^`exponent`, without the way through a bigint: `("0470", -2)` → `47e-1`. */
export function fromDigitText(text: string, exponent: number): Decimal {
  let start = 0;
  let end = text.length;
  while (start < end && text.charCodeAt(start) === 48) start++;
  while (end > start && text.charCodeAt(end - 1) === 48) end--;
  return start === end ? ZERO : (`${text.slice(start, end)}e${exponent + text.length - end}` as Decimal); // as: canonical by construction
}

/** `value` × 10^`power`, exactly and cheaply: `("47e2", -3)` → `47e-1`. */
export function shift(value: Decimal, power: number): Decimal {
  if (power === 0 || value === ZERO) return value;
  const at = value.indexOf('e') + 1;
  return `${value.slice(0, at)}${Number(value.slice(at)) + power}` as Decimal; // as: the digits stay canonical
}

/** `"4.70"` → `47e-1`; `"1e-7"` → `1e-7`; anything that is not a plain machine number → null. */
export function parseDecimal(text: string): Decimal | null {
  const match = PLAIN.exec(text);
  if (!match) return null;
  const [, sign = '', whole = '', part = '', power = '0'] = match;
  if (!whole && !part) return null;
  const digits = BigInt(whole + part);
  return fromDigits(sign === '-' ? -digits : digits, Number(power) - part.length);
}

/** For literals in code: throws on what is not a number, since that is our own bug. */
export function decimal(value: number | string): Decimal {
  const parsed = parseDecimal(String(value));
  if (parsed === null) throw new Error(`decimal() wants a plain number, got ${JSON.stringify(value)}`);
  return parsed;
}

/** Digits and exponent of a decimal. */
export function digitsOf(value: Decimal): { digits: bigint; exponent: number } {
  const at = value.indexOf('e');
  return { digits: BigInt(value.slice(0, at)), exponent: Number(value.slice(at + 1)) };
}

/** Doubles that differ by more than this share of the larger one stand in the order of the exact numbers. */
const SURELY_APART = 1e-12;

/** −1, 0 or 1, exactly; doubles only where they can't err, since they are quicker. */
export function compare(a: Decimal, b: Decimal): number {
  if (a === b) return 0;
  const [near, other] = [Number(a), Number(b)];
  if (Math.abs(near - other) > SURELY_APART * Math.max(Math.abs(near), Math.abs(other))) return near < other ? -1 : 1;
  const x = digitsOf(a);
  const y = digitsOf(b);
  const exponent = Math.min(x.exponent, y.exponent);
  const [left, right] = [x.digits * 10n ** BigInt(x.exponent - exponent), y.digits * 10n ** BigInt(y.exponent - exponent)];
  return left < right ? -1 : 1;
}

export function multiply(a: Decimal, b: Decimal): Decimal {
  const x = digitsOf(a);
  const y = digitsOf(b);
  return fromDigits(x.digits * y.digits, x.exponent + y.exponent);
}

/** The nearest double: for JSON, charts and ranking, never for arithmetic on stock. */
export function toNumber(value: Decimal): number {
  return Number(value);
}

export function subtract(a: Decimal, b: Decimal): Decimal {
  const x = digitsOf(a);
  const y = digitsOf(b);
  const exponent = Math.min(x.exponent, y.exponent);
  return fromDigits(x.digits * 10n ** BigInt(x.exponent - exponent) - y.digits * 10n ** BigInt(y.exponent - exponent), exponent);
}

/** `a` / `b` rounded to so many places after the point, halves away from zero: `(1, 3, 4)` → 3333e-4. `b` must not be zero. */
export function ratio(a: Decimal, b: Decimal, places: number): Decimal {
  const x = digitsOf(a);
  const y = digitsOf(b);
  const power = x.exponent - y.exponent + places;
  const over = 2n * x.digits * 10n ** BigInt(Math.max(power, 0));
  const under = y.digits * 10n ** BigInt(Math.max(-power, 0));
  const away = over < 0n === under < 0n ? 1n : -1n;
  return fromDigits((over / under + away) / 2n, -places);
}
