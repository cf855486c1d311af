import type { Outcome } from '#core/stock/refusal.ts';
import type { KitTake } from '#db/read-builds.ts';
import { readWhole } from '#actions/whole.ts';

const CELL = /^(?:(\d{1,4})\.)?(\d{1,4})(?:\/(\d{1,9}))?=(.+)$/;

export interface CellQuantity {
  readonly take: string;
  readonly quantity: number;
}

/** `['3=20', '2.1/12=5']` -> 20 for cell 3 of tray 1, 5 of bag 12 for cell 1 of tray 2. */
export function readCells(words: readonly string[], takes: readonly KitTake[]): Outcome<CellQuantity[]> {
  const found: CellQuantity[] = [];
  for (const word of words) {
    const [, tray = '1', cell = '', bag, quantityWord = ''] = CELL.exec(word) ?? [];
    const meant = takes.filter(
      (take) => take.tray === Number(tray) && take.cell === Number(cell) && (bag === undefined || take.bag === Number(bag)),
    );
    const [take, other] = meant;
    if (!take) return no(word, 'CELL=QUANTITY with a cell of this build');
    if (other) return no(word, `CELL/BAG=QUANTITY: cell ${cell} is filled from bags ${meant.map((one) => one.bag).join(', ')}`);
    const quantity = readWhole(quantityWord, 'quantity');
    if (!quantity.ok) return quantity;
    found.push({ take: take.id, quantity: quantity.value });
  }
  return { ok: true, value: found };
}

function no(received: string, expected: string): Outcome<never> {
  return { ok: false, refusal: { code: 'not-valid', args: { field: 'CELL', received, expected } } };
}
