import { digitsOf, fromDigits, type Decimal } from './decimal.ts';

/** Letters of IEC 60062 for the point, by unit; in upper case as they stand in part codes. Volts and amperes follow the same habit. */
const LETTERS: Readonly<Record<string, readonly (readonly [power: number, letter: string])[]>> = {
  ohm: [
    [12, 'T'],
    [9, 'G'],
    [6, 'M'],
    [3, 'K'],
    [0, 'R'],
    [-3, 'L'],
  ],
  F: [
    [0, 'F'],
    [-6, 'U'],
    [-9, 'N'],
    [-12, 'P'],
  ],
  H: [
    [0, 'H'],
    [-3, 'M'],
    [-6, 'U'],
    [-9, 'N'],
    [-12, 'P'],
  ],
  Hz: [
    [9, 'G'],
    [6, 'M'],
    [3, 'K'],
    [0, 'H'],
  ],
  V: [
    [3, 'K'],
    [0, 'V'],
    [-3, 'M'],
  ],
  A: [
    [0, 'A'],
    [-3, 'M'],
    [-6, 'U'],
  ],
  W: [
    [0, 'W'],
    [-3, 'M'],
  ],
};

/**
 * A value in the letter-and-digit code of IEC 60062, as in part codes: 4700 ohm → `4K7`, 1000 ohm → `1K0`, 0.47 ohm → `R47`,
 * 100 nF → `100N`, 0 ohm → `0R`, 4700 µF → `4700U`. Exact: every digit is written, and `readRkmOf` reads the same value back.
 */
export function writeRkm(value: Decimal, unit: string | null): string {
  const steps = LETTERS[unit ?? 'ohm'] ?? LETTERS['ohm'] ?? [];
  const { digits, exponent } = digitsOf(value);
  const base = steps.find(([power]) => power === 0)?.[1] ?? 'R';
  if (digits === 0n) return `0${base}`;
  const size = digits.toString().length + exponent;
  const [power, letter] = steps.find(([p]) => size > p && (p !== 0 || unit === 'ohm' || size > 0)) ??
    steps[steps.length - 1] ?? [0, base];
  if (unit === 'ohm' && size <= 0 && size > -3) return pointed(digits.toString(), exponent, 'R').replace(/^0/, '');
  return pointed(digits.toString(), exponent - power, letter);
}

/** One digit behind the letter at least where one stands before it (`1K0`), none behind two or more (`10K`). */
function pointed(digits: string, exponent: number, letter: string): string {
  if (exponent >= 0) {
    const whole = digits + '0'.repeat(exponent);
    return whole.length === 1 && letter !== 'V' && letter !== 'A' && letter !== 'W' ? `${whole}${letter}0` : `${whole}${letter}`;
  }
  const padded = digits.padStart(1 - exponent, '0');
  return `${padded.slice(0, exponent)}${letter}${padded.slice(exponent)}`;
}

/** What `writeRkm` wrote, in the base unit; null for anything else. `("4K7", "ohm")` → 47e2; `("100N", "F")` → 1e-7. */
export function readRkmOf(text: string, unit: string): Decimal | null {
  const match = /^(\d*)([A-Z])(\d*)$/.exec(text.toUpperCase());
  const [, whole = '', letter = '', part = ''] = match ?? [];
  const power = LETTERS[unit]?.find(([, one]) => one === letter)?.[0];
  if (!match || power === undefined || (!whole && !part)) return null;
  return fromDigits(BigInt(whole + part), power - part.length);
}
