import { OWN_HEAD, writeOwnRow } from '#core/bom/own-list.ts';
import type { Stock } from '#core/stock/stock.ts';

/** The stock as lines of CSV (RFC 4180): a head, then a line for each bag by its number. Formulae are made harmless. */
export function* exportLines(stock: Stock): Generator<string> {
  yield line(OWN_HEAD);
  for (const bag of stock.bags) yield line(writeOwnRow(bag));
}

function line(cells: readonly string[]): string {
  return cells.map((cell) => (/[",\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(',');
}
