import type { Fact } from '#core/part/part.ts';
import { digitsOf, type Decimal } from '#core/quantity/decimal.ts';

const PREFIX: Readonly<Record<number, string>> = { [-12]: 'p', [-9]: 'n', [-6]: 'µ', [-3]: 'm', 0: '', 3: 'k', 6: 'M', 9: 'G' };
const SIGN: Readonly<Record<string, string>> = { ohm: 'Ω', degC: '°C' };

/** A fact's value for a sentence: `47e2` ohm → `4.7 kΩ`, `1e-2` fraction → `1 %`, words as they are. */
export function factText(fact: Fact): string {
  if (fact.unit === null) return fact.value;
  const value = fact.value as Decimal; // as: a fact with a unit holds a canonical decimal
  if (fact.unit === 'fraction') return `${shifted(value, 2)} %`;
  if (fact.unit === 'count') return shifted(value, 0);
  const sign = SIGN[fact.unit] ?? fact.unit;
  if (fact.unit === 'degC' || fact.unit === '1/K') return `${shifted(value, 0)} ${sign}`;
  if (fact.unit === 'm') return `${shifted(value, 3)} mm`;
  const power = prefixPower(value);
  return `${shifted(value, -power)} ${PREFIX[power] ?? ''}${sign}`;
}

function prefixPower(value: Decimal): number {
  const { digits, exponent } = digitsOf(value);
  if (digits === 0n) return 0;
  const leading = digits.toString().replace('-', '').length - 1 + exponent;
  return Math.max(-12, Math.min(9, Math.floor(leading / 3) * 3));
}

/** `value` × 10^`by` as plain digits. */
function shifted(value: Decimal, by: number): string {
  const { digits, exponent } = digitsOf(value);
  const power = exponent + by;
  const sign = digits < 0n ? '-' : '';
  const text = digits.toString().replace('-', '');
  if (power >= 0) return digits === 0n ? '0' : sign + text + '0'.repeat(power);
  const padded = text.padStart(1 - power, '0');
  return `${sign}${padded.slice(0, power)}.${padded.slice(power)}`;
}
