import { compare, decimal, multiply, type Decimal } from './decimal.ts';

/** Below and above the nominal value, as positive magnitudes: fractions, or absolute in the unit named. */
export interface Tolerance {
  readonly low: Decimal;
  readonly high: Decimal;
  readonly unit: 'fraction' | 'F';
}

const PERCENT: Readonly<Record<string, string>> = {
  E: '0.005',
  L: '0.01',
  P: '0.02',
  W: '0.05',
  B: '0.1',
  C: '0.25',
  D: '0.5',
  F: '1',
  G: '2',
  H: '3',
  J: '5',
  K: '10',
  M: '20',
  N: '30',
};
const ASYMMETRIC: Readonly<Record<string, readonly [low: string, high: string]>> = {
  Q: ['10', '30'],
  T: ['10', '50'],
  S: ['20', '50'],
  Z: ['20', '80'],
};
const PICOFARAD: Readonly<Record<string, string>> = { A: '0.05', W: '0.05', B: '0.1', C: '0.25', D: '0.5', F: '1', G: '2' };
const HUNDREDTH = decimal('0.01');
const TEN_PICOFARAD = decimal('1e-11');

/**
 * A tolerance letter of IEC 60062 (tables from memory, confirmed by makers' sheets): `J` → ±5 %, `Z` → −20/+80 %. For a
 * capacitor under 10 pF the letters B C D F G are absolute (±0.5 pF); at exactly 10 pF makers differ, and it is read as a fraction.
 */
export function readToleranceLetter(letter: string, capacitance: Decimal | null = null): Tolerance | null {
  if (letter.length !== 1) return null; // no `__proto__` of the tables below
  if (capacitance !== null && compare(capacitance, TEN_PICOFARAD) < 0) {
    const absolute = PICOFARAD[letter];
    if (absolute !== undefined) return even(multiply(decimal(absolute), decimal('1e-12')), 'F');
  }
  const fraction = PERCENT[letter];
  if (fraction !== undefined) return even(multiply(decimal(fraction), HUNDREDTH), 'fraction');
  const pair = ASYMMETRIC[letter];
  return pair
    ? { low: multiply(decimal(pair[0]), HUNDREDTH), high: multiply(decimal(pair[1]), HUNDREDTH), unit: 'fraction' }
    : null;
}

/** The letter for a tolerance, or null where the standard has none: ±1 % → `F`. */
export function writeToleranceLetter(tolerance: Tolerance): string | null {
  for (const [table, scale, unit] of [
    [PERCENT, '0.01', 'fraction'],
    [PICOFARAD, '1e-12', 'F'],
  ] as const) {
    if (tolerance.unit !== unit || tolerance.low !== tolerance.high) continue;
    for (const [letter, size] of Object.entries(table))
      if (letter !== 'A' && multiply(decimal(size), decimal(scale)) === tolerance.low) return letter;
  }
  if (tolerance.unit !== 'fraction') return null;
  const found = Object.entries(ASYMMETRIC).find(
    ([, [low, high]]) =>
      multiply(decimal(low), HUNDREDTH) === tolerance.low && multiply(decimal(high), HUNDREDTH) === tolerance.high,
  );
  return found?.[0] ?? null;
}

function even(size: Decimal, unit: Tolerance['unit']): Tolerance {
  return { low: size, high: size, unit };
}
