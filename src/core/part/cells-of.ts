import { withoutControls } from '#core/quantity/plain-text.ts';
import type { Cell, CellReader } from './cell.ts';
import type { Doubt } from './doubt.ts';
import { READ_FIELDS, type PartHints } from './hints.ts';
import { isDescription } from './part-number.ts';

/** More than a page says no part; what stands behind is not read. */
const MOST_CHARACTERS = 2000;

/** The cells to read a part from: those of a row by what they mean, else the text as free words; of each no more than a page. */
export function cellsOf(
  text: string,
  { fields }: PartHints,
  readCell: CellReader,
): { cells: readonly Cell[]; doubts: readonly Doubt[] } {
  const given = READ_FIELDS.filter((field) => (fields?.[field] ?? '').trim() !== '');
  const texts = given.map((field) => ({ field, written: withoutControls(fields?.[field] ?? '') }));
  if (texts.length === 0) {
    const written = withoutControls(text);
    return { cells: written.trim() === '' ? [] : [readCell('text', page(written))], doubts: longDoubts(written.length) };
  }
  const cells = texts.map(({ field, written }) => {
    const cell = readCell(field, page(written));
    // words under a header of part numbers are read as words
    return field === 'partNumber' && isDescription(cell) ? readCell('text', page(written)) : cell;
  });
  return { cells, doubts: longDoubts(Math.max(...texts.map(({ written }) => written.length))) };
}

function page(written: string): string {
  return written.slice(0, MOST_CHARACTERS);
}

function longDoubts(length: number): Doubt[] {
  return length > MOST_CHARACTERS ? [{ field: 'row', code: 'text-long', args: { length, most: MOST_CHARACTERS } }] : [];
}
