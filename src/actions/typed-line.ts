import { readPart } from '#core/part/read-part.ts';
import { done, refuse, type Outcome } from '#core/stock/refusal.ts';
import type { ReceivedItem } from './inputs.ts';

const COUNT = /^(~|about\s+|ca\.?\s*)?(\d{1,12})\s*(?:x|×|pcs?\.?|pieces?)?\s+(?=\S)/i;

/**
 * Reads a line as it is typed when a delivery is taken in: how many, then what.
 *
 * `100 4k7 1% 0805` -> 100 of that resistor; `~50 100n X7R` -> 50, none of them sure; `4k7 0805` is refused: how many?
 */
export function readTypedLine(line: string): Outcome<ReceivedItem> {
  const text = line.trim().replaceAll(/\s+/g, ' ');
  const count = COUNT.exec(text);
  if (!count) return refuse('not-valid', { field: 'line', received: text.slice(0, 80), expected: 'quantity-first' });
  const [start, estimate, digits = ''] = count;
  const what = text.slice(start.length);
  const { part } = readPart(what);
  return done({ quantity: Number(digits), ...(estimate && { sure: 0 }), part: { ...part, text: what } });
}
