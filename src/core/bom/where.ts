import type { Doubt } from '#core/part/doubt.ts';
import { isNoBagNumber, MOST_NUMBER } from '#core/stock/bag-number.ts';
import { plainText } from '#core/quantity/plain-text.ts';
import { cellsOf, type RoleCell } from './row-cells.ts';

/** Where a row of a stock list says that its bag is. */
export interface Where {
  /** bag number, else the box or place, as printed: the `location` of the `read` contract */
  readonly location: string | null;
  /** what names the bag: the cell of a column of bag numbers, else of one of locations, where bare numbers are bags */
  readonly bag: string | null;
  readonly box: string | null;
  readonly place: string | null;
}

/**
 * What the columns of bags, locations, boxes and places say. `Bag 12 | Location window | Drawer 3` → bag `12`, place `window, 3`;
 * several columns of places keep their headers: `Shelf 2, Drawer 7`.
 */
export function whereOf(cells: readonly RoleCell[]): Where {
  const [bags, locations] = [cellsOf(cells, 'bag'), cellsOf(cells, 'location')];
  const places = cells.filter(({ column }) => column.role === 'place');
  const named = places.map(({ column, text }) => (places.length > 1 && column.header ? `${column.header} ${text}` : text));
  const place = [...(bags.length ? locations : []), ...named].join(', ') || null;
  const bag = bags[0] ?? locations[0] ?? null;
  const box = cellsOf(cells, 'box')[0] ?? null;
  return { location: bag ?? place ?? box, bag, box, place };
}

/** A bag by a number that no bag can have: it gets the next free one, and what is printed is kept as its place. */
export function bagDoubts({ bag }: Pick<Where, 'bag'>): Doubt[] {
  const text = plainText(bag ?? '').trim();
  return isNoBagNumber(text) ? [{ field: 'location', code: 'bag-number', args: { text, most: MOST_NUMBER } }] : [];
}
