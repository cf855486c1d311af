import type { Doubt } from '#core/part/doubt.ts';

export interface QuantityReading {
  readonly quantity: number | null;
  readonly doubts: readonly Doubt[];
  /** the text is a number that no quantity can be: why */
  readonly impossible: 'negative' | 'too-large' | null;
}

const NOTHING: QuantityReading = { quantity: null, doubts: [], impossible: null };
const BLANK = /^(?:[-–—~?.*x_]+|n\/?a|none|tbd|y|yes|ja|oui|si|sí)?$/i;
const PIECES = '(?:(?:x|×|pcs?|pieces?|ea|each|off|st|stk|stück|stueck|stuks|szt|ks|db|kpl|шт|個|个|pi[eè]ces|piezas|pezzi|uds?|units?)\\.?)';
const PLAIN = new RegExp(`^[x×]?\\s*([+-]?)\\s*(\\d[\\d.,' ]*?)\\s*${PIECES}?$`, 'i');
/** more than any lab holds or any board needs */
const MOST = 1e9;

/**
 * Reads a quantity as printed: `5`, `5 pcs`, `x5`, `1'000` → a number; `approx 150`, `10+`, `Reel 500` → null, since no plain count is
 * printed, with the number in a doubt; `2.5` → 2.5 with a doubt, pieces being whole. Never guesses.
 */
export function readQuantity(text: string): QuantityReading {
  const cell = text.replace(/^'/, '').trim();
  if (BLANK.test(cell)) return NOTHING;
  const plain = PLAIN.exec(cell);
  const number = plain ? plainNumber(plain[2] ?? '') : null;
  if (plain && number !== null) {
    if (plain[1] === '-' && number !== 0) return { ...NOTHING, impossible: 'negative' };
    if (number > MOST) return { ...NOTHING, impossible: 'too-large' };
    return { quantity: number, impossible: null, doubts: Number.isInteger(number) ? [] : [doubt('quantity-not-whole', { text: cell })] };
  }
  const inside = /\d[\d.,']*/.exec(cell)?.[0];
  const taken = inside === undefined ? null : plainNumber(inside);
  if (taken === null) return { ...NOTHING, doubts: [doubt('quantity-unreadable', { text: cell })] };
  return { ...NOTHING, doubts: [doubt('quantity-estimate', { text: cell, taken })] };
}

/** Whether a cell could stand in a column of quantities. */
export function looksLikeQuantity(text: string): boolean {
  const cell = text.trim();
  return PLAIN.test(cell) || /^(?:approx|about|ca|circa|~|several|many|few|some|reel|strip|bag|full|rolle|viele|einige|etwa)\b/i.test(cell) || /^\d+\s*\+$/.test(cell);
}

/** `1,000` and `1'000` are a thousand, `1,5` and `1.5` one and a half. */
function plainNumber(digits: string): number | null {
  const text = digits.replace(/[' ]/g, '').replace(/[.,]$/, '');
  const grouped = /^\d{1,3}(,\d{3})+$/.test(text) ? text.replaceAll(',', '') : text.replace(',', '.');
  return /^\d+(\.\d+)?$/.test(grouped) ? Number(grouped) : null;
}

function doubt(code: 'quantity-not-whole' | 'quantity-unreadable' | 'quantity-estimate', args: Doubt['args']): Doubt {
  return { field: 'quantity', code, args };
}
