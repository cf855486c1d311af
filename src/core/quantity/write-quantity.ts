import { digitsOf, type Decimal } from './decimal.ts';

const PREFIXES: readonly (readonly [power: number, prefix: string])[] = [
  [9, 'G'],
  [6, 'M'],
  [3, 'k'],
  [0, ''],
  [-3, 'm'],
  [-6, 'µ'],
  [-9, 'n'],
  [-12, 'p'],
];
const SIGNS: Readonly<Record<string, string>> = { ohm: 'Ω' };
/**
 * Prefixes that nobody writes with a unit: farads are in pF, nF and µF (4700 µF, not 4.7 mF); and those that read as another
 * where case is lost, as MV and mV, mHz and MHz do. Common practice, no source.
 */
const SKIPPED: Readonly<Record<string, readonly number[]>> = {
  ohm: [-9, -12],
  F: [-3, 3, 6, 9],
  H: [3, 6, 9],
  Hz: [-3, -6, -9, -12],
  V: [-9, -12, 6, 9],
  A: [6, 9],
  W: [-9, -12, 6, 9],
};

/** A value for people, exact: 4700 ohm → `4.7 kΩ`, 1e-7 F → `100 nF`, 47e-4 F → `4700 µF`, 0 ohm → `0 Ω`. */
export function writeQuantity(value: Decimal, unit: string): string {
  const { digits, exponent } = digitsOf(value);
  const sign = SIGNS[unit] ?? unit;
  if (digits === 0n) return `0 ${sign}`;
  const size = digits.toString().replace('-', '').length + exponent;
  const allowed = PREFIXES.filter(([power]) => !SKIPPED[unit]?.includes(power));
  const [power, prefix] = allowed.find(([p]) => size > p) ?? allowed[allowed.length - 1] ?? [0, ''];
  return `${plainDigits(value, -power)} ${prefix}${sign}`;
}

/** `value` × 10^`by` in plain digits: `("47e-1", 0)` → `4.7`. */
export function plainDigits(value: Decimal, by = 0): string {
  const { digits, exponent } = digitsOf(value);
  const shift = exponent + by;
  const minus = digits < 0n ? '-' : '';
  const text = (digits < 0n ? -digits : digits).toString();
  if (shift >= 0) return `${minus}${text}${'0'.repeat(shift)}`;
  const padded = text.padStart(1 - shift, '0');
  return `${minus}${padded.slice(0, shift)}.${padded.slice(shift)}`;
}
