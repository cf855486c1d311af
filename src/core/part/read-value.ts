import type { Decimal } from '#core/quantity/decimal.ts';
import { plainText, withoutControls } from '#core/quantity/plain-text.ts';
import { leadingRkmAt, quantityAt, type Quantity } from '#core/quantity/quantity.ts';
import { writeQuantity } from '#core/quantity/write-quantity.ts';
import type { Doubt } from './doubt.ts';

/** Units of the values that parts are named by. */
const UNITS: ReadonlySet<string> = new Set(['ohm', 'F', 'H', 'Hz', 'V', 'A', 'W']);

export interface ValueReading {
  readonly value: Decimal;
  readonly unit: string;
  readonly doubts: readonly Doubt[];
}

/**
 * A value alone, in any notation, with what is not sure about it; null where the text is more than a value, or none.
 * `"9k09"` → 9090 ohm; `"100n"` → 1e-7 F, with a doubt on the unit; `"0.1MF"` → 1e-7 F, or 1e-4. Never throws.
 */
export function readValue(text: string): ValueReading | null {
  const plain = plainText(withoutControls(text)).trim();
  const quantity = quantityAt(plain, 0) ?? leadingRkmAt(plain, 0);
  if (!quantity || quantity.end !== plain.length || quantity.letter !== null || quantity.sign !== '') return null;
  const taken = quantity.unit === null ? assumed(quantity) : { unit: quantity.unit, value: quantity.value, sure: true };
  if (!taken || !UNITS.has(taken.unit)) return null;
  const { value, unit } = taken;
  const doubts: Doubt[] = taken.sure ? [] : [{ field: 'value', code: 'unit-assumed', args: { text: plain, unit } }];
  if (quantity.other !== null && quantity.other !== value)
    doubts.push({
      field: 'value',
      code: 'two-readings',
      args: { text: plain, taken: writeQuantity(value, unit), other: writeQuantity(quantity.other, unit) },
    });
  return { value, unit, doubts };
}

/** Without a unit: k, M and G are ohms, as everybody writes them; p, n and µ may be henries as well as farads; a bare number is ohms. */
function assumed({ value, power, form, note }: Quantity): { value: Decimal; unit: string; sure: boolean } | null {
  if (note === 'lost') return null;
  if (power < -3) return { value, unit: 'F', sure: false };
  return { value, unit: 'ohm', sure: power > 0 && form !== 'bare' };
}
