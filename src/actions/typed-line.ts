import type { Doubt } from '#core/part/doubt.ts';
import { withDoubts } from '#core/part/doubted.ts';
import { readPart } from '#core/part/read-part.ts';
import { plainText } from '#core/quantity/plain-text.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import { MOST } from './checks.ts';
import type { ReceivedItem } from './inputs.ts';

const COUNT = /^(~|about\s+|ca\.?\s*)?(\d+)\s*(?:x|×|pcs?\.?|pieces?)?\s+(?=\S)/i;
/** a number that counts no pieces: `1e9`, `-3`, `2.5` */
const NUMBER = /^[+-]?\d*[.,]?\d+(?:e[+-]?\d+)?(?=\s|$)/i;

/** A line as it was read, and what is not sure about it. */
export interface TypedLine {
  readonly item: ReceivedItem;
  readonly doubts: readonly Doubt[];
}

/**
 * Reads a line as it is typed when a delivery is taken in: how many, then what.
 *
 * `100 4k7 1% 0805` -> 100 of that resistor; `~50 100n X7R` -> 50, none of them sure; `4k7 0805` is refused: how many?
 */
export function readTypedLine(line: string): Outcome<TypedLine> {
  const text = line.trim().replaceAll(/\s+/g, ' ');
  const plain = plainText(text);
  const count = COUNT.exec(plain);
  const number = NUMBER.exec(plain)?.[0].trim();
  if (!count && number !== undefined)
    return refuse('not-valid', { field: 'quantity', received: number.slice(0, 40), expected: 'plain-figures' });
  if (!count) return refuse('not-valid', { field: 'line', received: text.slice(0, 80), expected: 'quantity-first' });
  const [start, estimate, digits = ''] = count;
  if (Number(digits) > MOST)
    return refuse('out-of-range', { field: 'quantity', received: digits.slice(0, 40), least: 1, most: MOST });
  const what = text.slice(start.length);
  const { part, doubts } = readPart(what);
  const kept = withDoubts({ ...part, text: what }, doubts);
  return done({ item: { quantity: Number(digits), ...(estimate && { sure: 0 }), part: kept }, doubts });
}
