import {
  isBlank,
  isCount,
  isFootprintCell,
  isLink,
  isPartNumber,
  isPrice,
  isRefsCell,
  isSizeCell,
  isValueCell,
  isWords,
  isYesOrNo,
} from './cell-shapes.ts';
import type { ColumnGuess, ColumnRole } from './columns.ts';

/** What the cells of a column say for the meaning that it was given. */
export interface CellEvidence {
  /** cells that say something */
  readonly said: number;
  /** those that look as the meaning wants; null where any text would do */
  readonly fit: number | null;
}

const SHAPES: Readonly<Partial<Record<ColumnRole, (cell: string) => boolean>>> = {
  refs: isRefsCell,
  quantity: isCount,
  value: isValueCell,
  package: isSizeCell,
  footprint: isFootprintCell,
  partNumber: isPartNumber,
  price: isPrice,
  link: isLink,
  fitted: isYesOrNo,
  description: isWords,
};

/** How many cells of a column look as its meaning wants. */
export function cellEvidence({ column, role }: ColumnGuess, rows: readonly (readonly string[])[]): CellEvidence {
  const said = rows.map((row) => (row[column - 1] ?? '').trim()).filter((cell) => !isBlank(cell));
  const shape = SHAPES[role];
  return { said: said.length, fit: shape ? said.filter(shape).length : null };
}
