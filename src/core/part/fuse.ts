import type { Cell } from './cell.ts';

/** Characteristic, current, breaking capacity and voltage in one run: `T2A`, `F500mA`, `T 1A`, `T1AL250V` (IEC 60127-1 cl. 6). */
const MARKING = /(?<![A-Za-z0-9])(FF|TT|F|M|T)\s?\d+(?:[.,]\d+)?\s?[mM]?A(?:[HLE]?(?:\s?\d+\s?V)?)(?![A-Za-z])/;

/** The letter by itself: `1A 250V T`. */
const ALONE = /(?<=\d\s?(?:[mM]?A|V|mm|20|32)[\s,]+)(FF|TT|F|M|T)(?![A-Za-z0-9])/;

/** The characteristic that the marking of a fuse says, FF to TT; null where none stands there. */
export function fuseCharacteristic(cells: readonly Cell[]): string | null {
  for (const { field, text } of cells) {
    const found = field === 'footprint' || field === 'supplierNumber' ? null : (MARKING.exec(text) ?? ALONE.exec(text));
    if (found) return found[1] ?? null;
  }
  return null;
}
