import { digitsOf } from '#core/quantity/decimal.ts';
import { numberFact, type Part } from './part.ts';

const PREFIXES: ReadonlyArray<readonly [number, string]> = [[9, 'G'], [6, 'M'], [3, 'k'], [0, ''], [-3, 'm'], [-6, 'µ'], [-9, 'n'], [-12, 'p']];

/** The value for people: `4.7 kΩ`, `100 nF`; empty when the part has none. First simple version. */
export function writeValue(part: Part): string {
  const value = numberFact(part, 'value');
  if (value === null) return '';
  const { digits, exponent } = digitsOf(value);
  const size = digits.toString().length + exponent;
  const [power, prefix] = PREFIXES.find(([p]) => size > p) ?? [0, ''];
  const unit = part.facts.value?.unit === 'ohm' ? 'Ω' : (part.facts.value?.unit ?? '');
  return `${Number(`${digits}e${exponent - power}`)} ${prefix}${unit}`;
}
