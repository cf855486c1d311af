import { isCount, isFootprintCell, isPrice, isRefsCell, isSizeCell, isValueCell } from './cell-shapes.ts';
import type { ColumnGuess } from './columns.ts';

/**
 * A row with more cells than its header holds a delimiter that should have been quoted: the cells are joined again where the
 * rest then fits its columns best. `jack, 3.5 mm` in a column of descriptions → one cell.
 */
export function realign(cells: readonly string[], columns: readonly ColumnGuess[]): readonly string[] {
  const extra = lastSaid(cells) - columns.length;
  if (extra <= 0) return cells;
  let best: { cells: string[]; score: number } | null = null;
  for (let at = 0; at < columns.length; at += 1) {
    const joined = [
      ...cells.slice(0, at),
      cells.slice(at, at + extra + 1).join(','),
      ...cells.slice(at + extra + 1, lastSaid(cells)),
    ];
    const score = joined.reduce(
      (sum, cell, column) => sum + fits(cell.trim(), columns[column]),
      columns[at]?.role === 'quantity' ? -4 : 0,
    );
    if (!best || score > best.score) best = { cells: joined, score };
  }
  return best?.cells ?? cells;
}

function lastSaid(cells: readonly string[]): number {
  return cells.findLastIndex((cell) => cell.trim()) + 1;
}

function fits(cell: string, column: ColumnGuess | undefined): number {
  if (!cell || !column) return 0;
  const long = / /.test(cell) ? 1 : 0;
  switch (column.role) {
    case 'refs':
      return isRefsCell(cell) ? 2 : -1;
    case 'quantity':
      return isCount(cell) ? 2 : -2;
    case 'value':
      return isValueCell(cell) ? 1 : 0;
    case 'price':
      return isPrice(cell) || /^\d/.test(cell) ? 1 : -1;
    case 'package':
      return isSizeCell(cell) ? 1 : -long;
    case 'footprint':
      return isFootprintCell(cell) ? 1 : -long;
    case 'description':
    case 'note':
      return long;
    default:
      return -long / 2;
  }
}
