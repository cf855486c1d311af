import type { Bag, Stock } from '#core/stock/stock.ts';

const HEAD = ['Bag', 'Box', 'Place', 'Part code', 'Description', 'Quantity', 'Sure', 'Reserved', 'State', 'Oldest'] as const;
/** Starts that a spreadsheet takes for a formula (OWASP, CSV injection). */
const FORMULA = /^[=+\-@\t\r]/;

function cell(value: string | number | null): string {
  const text = value === null ? '' : String(value);
  const safe = typeof value === 'string' && FORMULA.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function row({ number, box, place, code, part, onHand, sure, reserved, state, oldest }: Bag): string {
  return [number, box, place, code, part.text, onHand, sure, reserved, state, oldest].map(cell).join(',');
}

/** The stock as lines of CSV (RFC 4180): a head, then a line for each bag by its number. Formulae are made harmless. */
export function* exportLines(stock: Stock): Generator<string> {
  yield HEAD.join(',');
  for (const bag of stock.bags) yield row(bag);
}
