import { writeQuantity } from '#core/quantity/write-quantity.ts';
import { numberFact, type Part } from './part.ts';

/** The value for people: `4.7 kΩ`, `100 nF`; empty when the part has none. */
export function writeValue(part: Part): string {
  const value = numberFact(part, 'value');
  return value === null ? '' : writeQuantity(value, part.facts.value?.unit ?? '');
}
