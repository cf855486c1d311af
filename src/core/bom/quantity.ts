import type { Doubt } from '#core/part/doubt.ts';
import { plainText } from '#core/quantity/plain-text.ts';
import type { NumberHabit } from './number-habit.ts';

export interface QuantityReading {
  readonly quantity: number | null;
  readonly doubts: readonly Doubt[];
  /** the text is a number that no quantity can be: why */
  readonly impossible: 'negative' | 'too-large' | null;
}

const NOTHING: QuantityReading = { quantity: null, doubts: [], impossible: null };
const BLANK = /^(?:[-–—~?.*x_]+|n\/?a|none|tbd|y|yes|ja|oui|si|sí)?$/i;
const PIECES =
  '(?:(?:x|×|pcs?|pieces?|ea|each|off|st|stk|stück|stueck|stuks|szt|ks|db|kpl|шт|個|个|pi[eè]ces|piezas|pezzi|uds?|units?)\\.?)';
const PLAIN = new RegExp(`^[x×]?\\s*([+-]?)\\s*(\\d[\\d.,' ]*?)\\s*${PIECES}?$`, 'i');
/** two packs of fifty */
const TIMES = new RegExp(`^(\\d{1,4})\\s*[x×*]\\s*(\\d{1,6})\\s*${PIECES}?$`, 'i');
/** what a spreadsheet makes of large numbers, and of codes */
const POWER = /^\d+(?:[.,]\d+)?e\+?\d{1,2}$/i;
const RANGE = /^(\d{1,9})\s*(?:-|–|—|\.{2,3}|…|to|bis|à)\s*(\d{1,9})\b/i;
const PART_OF = /^\d+\s*\/\s*\d+(?!\d)|^[½¼¾⅓⅔]/;
/** more than any lab holds or any board needs */
const MOST = 1e9;

/**
 * Reads a quantity as printed: `5`, `5 pcs`, `x5`, `1'000`, `2x50` → a number; `approx 150`, `10+`, `50-60` → null, since no plain
 * count is printed, with the (least) number in a doubt; `1e2` → 100, `2.5` → 2.5, each with a doubt; `1/2 reel` → null.
 * `1.500` is 1500 or 1.5 by the habit of the file; without one, the reading that is whole pieces, with a doubt.
 */
export function readQuantity(text: string, habit: NumberHabit = null): QuantityReading {
  const cell = plainText(text).replace(/^'/, '').trim();
  if (BLANK.test(cell)) return NOTHING;
  const packs = TIMES.exec(cell);
  if (packs) return counted(Number(packs[1]) * Number(packs[2]), []);
  if (POWER.test(cell)) {
    const number = Number(cell.replace(',', '.'));
    return counted(number, [doubt('quantity-estimate', { text: cell, taken: number })]);
  }
  const plain = PLAIN.exec(cell);
  const number = plain ? plainNumber(plain[2] ?? '', habit) : null;
  if (plain && number !== null) {
    if (plain[1] === '-' && number !== 0) return { ...NOTHING, impossible: 'negative' };
    const other = habit === null ? otherNumber(plain[2] ?? '', number) : null;
    return counted(number, [
      ...(Number.isInteger(number) ? [] : [doubt('quantity-not-whole', { text: cell })]),
      ...(other === null ? [] : [doubt('two-readings', { text: cell, taken: number, other })]),
    ]);
  }
  return estimate(cell, habit);
}

function counted(quantity: number, doubts: readonly Doubt[]): QuantityReading {
  return quantity > MOST ? { ...NOTHING, impossible: 'too-large' } : { quantity, impossible: null, doubts };
}

function estimate(cell: string, habit: NumberHabit): QuantityReading {
  const inside = PART_OF.test(cell) ? undefined : (RANGE.exec(cell)?.[1] ?? /\d[\d.,']*/.exec(cell)?.[0]);
  const taken = inside === undefined ? null : plainNumber(inside, habit);
  if (taken === null) return { ...NOTHING, doubts: [doubt('quantity-unreadable', { text: cell })] };
  return { ...NOTHING, doubts: [doubt('quantity-estimate', { text: cell, taken })] };
}

/** Whether a cell could stand in a column of quantities. */
export function looksLikeQuantity(text: string): boolean {
  const cell = plainText(text).trim();
  return (
    [PLAIN, TIMES, RANGE].some((shape) => shape.test(cell)) ||
    /^(?:approx|about|ca|circa|~|several|many|few|some|reel|strip|bag|full|rolle|viele|einige|etwa)\b/i.test(cell) ||
    /^\d+\s*\+$/.test(cell)
  );
}

/** `1,000` and `1'000` are a thousand, `1,5` and `1.5` one and a half; `1.500` and `1,500` go by the habit. */
function plainNumber(digits: string, habit: NumberHabit): number | null {
  const text = digits.replace(/[' ]/g, '').replace(/[.,]$/, '');
  if (/^\d{1,3}(?:\.\d{3})+(?:,\d+)?$/.test(text) && isGroupedByPoints(text, habit))
    return Number(text.replaceAll('.', '').replace(',', '.'));
  const grouped =
    habit !== 'comma' && /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(text) ? text.replaceAll(',', '') : text.replace(',', '.');
  return /^\d+(\.\d+)?$/.test(grouped) ? Number(grouped) : null;
}

function isGroupedByPoints(text: string, habit: NumberHabit): boolean {
  if (habit === 'comma' || text.includes(',') || /\..*\./.test(text)) return true;
  return habit === null && !Number.isInteger(Number(text));
}

/** The other reading of one point before three figures; null where there is none. */
function otherNumber(digits: string, taken: number): number | null {
  if (!/^[1-9]\d{0,2}\.\d{3}$/.test(digits.trim())) return null;
  const [whole, decimal] = [Number(digits.replace('.', '')), Number(digits)];
  return taken === whole ? decimal : whole;
}

function doubt(
  code: 'quantity-not-whole' | 'quantity-unreadable' | 'quantity-estimate' | 'two-readings',
  args: Doubt['args'],
): Doubt {
  return { field: 'quantity', code, args };
}
