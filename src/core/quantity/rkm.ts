import { digitsOf, type Decimal } from './decimal.ts';

const RESISTOR: ReadonlyArray<readonly [number, string]> = [[12, 'T'], [9, 'G'], [6, 'M'], [3, 'K'], [0, 'R'], [-3, 'L']];
const OTHER: ReadonlyArray<readonly [number, string]> = [[0, ''], [-3, 'M'], [-6, 'U'], [-9, 'N'], [-12, 'P']];

/**
 * A value in IEC 60062 letter-and-digit notation, upper case as in part codes: 4700 ohm → `4K7`, 100 nF → `100N`,
 * 0 → `0R`. For other units than the ohm the letter is the prefix of the unit.
 */
export function writeRkm(value: Decimal, unit: string | null): string {
  const steps = unit === 'ohm' || unit === null ? RESISTOR : OTHER;
  const { digits, exponent } = digitsOf(value);
  if (digits === 0n) return unit === 'ohm' ? '0R' : '0';
  const size = digits.toString().length + exponent; // digits before the point
  const [power, letter] = steps.find(([p]) => size > p) ?? steps[steps.length - 1] ?? [0, ''];
  const shift = exponent - power;
  if (shift >= 0) return `${digits}${'0'.repeat(shift)}${letter}`;
  const padded = digits.toString().padStart(1 - shift, '0');
  return `${padded.slice(0, shift)}${letter || '.'}${padded.slice(shift)}`.replace(/^0(?=[A-Z])/, unit === 'ohm' ? '' : '0');
}
