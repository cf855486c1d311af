import { decimal, digitsOf, fromDigits, multiply, type Decimal } from './decimal.ts';

const RKM = /^(\d*)([RKMGTLpnuµm])(\d*)$/;
const POWERS: Readonly<Record<string, number>> = { L: -3, R: 0, K: 3, M: 6, G: 9, T: 12, p: -12, n: -9, u: -6, µ: -6, m: -3 };

/** The whole of `text` in the letter-and-digit code of IEC 60062 clause 4, in ohms or farads: `4K7`, `470R`, `R47`, `4n7`. Without a letter null. */
export function readRkm(text: string): Decimal | null {
  const match = RKM.exec(text);
  const [, whole = '', letter = '', part = ''] = match ?? [];
  if (!match || (!whole && !part)) return null;
  return fromDigits(BigInt(whole + part), (POWERS[letter] ?? 0) - part.length);
}

/**
 * The figures of an SMD mark or ordering code: two or three digits and a power of ten, `R` for the point: `472` → 4700,
 * `1002` → 10000, `4R7`, `R010`, `000` → 0. For capacitors the result is in pF, and a last digit 8 or 9 means ×0.01 or ×0.1 (IEC 60062).
 */
export function readFigures(text: string, capacitor = false): Decimal | null {
  if (/^0{1,4}$/.test(text)) return fromDigits(0n, 0);
  if (text.includes('R')) return readRkm(text);
  const match = /^(\d{2,3})(\d)$/.exec(text);
  if (!match) return null;
  const power = Number(match[2]);
  return fromDigits(BigInt(match[1] ?? '0'), capacitor && power > 7 ? power - 10 : power);
}

/** What `readFigures` reads back, of so many figures and one power of ten; null where the value does not fit: `(47e2, 2)` → `472`. */
export function writeFigures(value: Decimal, figures: 2 | 3, capacitor = false): string | null {
  const { digits, exponent } = digitsOf(value);
  if (digits === 0n) return '0'.repeat(figures + 1);
  const text = digits.toString().padEnd(figures, '0');
  const power = exponent + digits.toString().length - text.length;
  if (digits < 0n || text.length > figures) return null;
  if (capacitor) return power >= -2 && power <= 7 ? `${text}${power < 0 ? power + 10 : power}` : null;
  return power >= 0 && power <= 9 ? `${text}${power}` : null;
}

/** Ordering codes of the UNI-ROYAL style: the last character may be J, K or L for ×0.1, ×0.01, ×0.001; 5 % parts have a leading 0. */
export function readUniroyal(text: string): Decimal | null {
  const match = /^(\d{3})([0-9JKL])$/.exec(text);
  if (!match) return null;
  const power = { J: -1, K: -2, L: -3 }[match[2] ?? ''] ?? Number(match[2]);
  return fromDigits(BigInt(match[1] ?? '0'), power);
}

const MANTISSA: Readonly<Record<string, string>> = {
  A: '1',
  B: '1.25',
  C: '1.6',
  D: '2',
  E: '2.5',
  F: '3.15',
  G: '4',
  H: '5',
  J: '6.3',
  K: '8',
  V: '3.5',
  W: '4.5',
  Q: '1.1',
  Z: '1.8',
  P: '2.2',
  N: '7.5',
  I: '6.5',
};

/** The two-character voltage code of EIA-198/JIS: `1H` → 50 V, `2A` → 100 V; digit a power of ten, letter a mantissa of the R10 series. */
export function readVoltageCode(code: string): Decimal | null {
  if (code === '0L') return decimal('5.5');
  if (code === '3L') return decimal('1200');
  if (code === 'YA') return decimal('35');
  const mantissa = MANTISSA[code[1] ?? ''];
  return /^[0-3][A-Z]$/.test(code) && mantissa !== undefined
    ? multiply(decimal(mantissa), fromDigits(1n, Number(code[0])))
    : null;
}

/** The two-character code for a rated voltage in volts, or null where there is none: 50 → `1H`. */
export function writeVoltageCode(volts: Decimal): string | null {
  if (volts === decimal('5.5')) return '0L';
  if (volts === decimal('1200')) return '3L';
  for (const [letter, mantissa] of Object.entries(MANTISSA))
    for (let power = 0; power <= 3; power++)
      if (multiply(decimal(mantissa), fromDigits(1n, power)) === volts) return `${power}${letter}`;
  return null;
}
