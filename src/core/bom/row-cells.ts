import type { Kind } from '#core/part/part.ts';
import { KINDS } from '#core/part/part.ts';
import { withoutControls } from '#core/quantity/plain-text.ts';
import { CELL_FIELDS, type PartHints, type ReadField } from '#core/part/hints.ts';
import { isBlank, isLink } from './cell-shapes.ts';
import type { ColumnGuess, ColumnRole } from './columns.ts';

/** A cell that says something, with what its column means. */
export interface RoleCell {
  readonly column: ColumnGuess;
  readonly text: string;
}

/** The cells of a row that say something. */
export function roleCells(cells: readonly string[], columns: readonly ColumnGuess[]): RoleCell[] {
  return columns.flatMap((column) => {
    const text = cleanCell(cells[column.column - 1] ?? '');
    return isBlank(text) ? [] : [{ column, text }];
  });
}

/** Printable ASCII without a guard, a backslash or a blank too many: nearly all that comes, and nothing to clean. */
const CLEAN = /^(?!['=])[!-[\]-~]+(?: [!-[\]-~]+)*$/;

/** A spreadsheet's guard (`'0805`, `="0805"`) is no part of the cell; line ends and runs of blanks are one blank; invisible marks go. */
export function cleanCell(cell: string): string {
  if (cell === '' || CLEAN.test(cell)) return cell;
  return withoutControls(cell)
    .replaceAll('\\-', '')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^'(?=[\d+=@-])/, '')
    .replace(/^="(.*)"$/, '$1');
}

export function cellsOf(cells: readonly RoleCell[], role: ColumnRole): string[] {
  return cells.filter(({ column }) => column.role === role).map(({ text }) => text);
}

const BARE = /^[±<>≤≥]?\s*-?\d+(?:[.,]\d+)?$/;
const UNIT = /^(?:[pnuµμmkKMG]?(?:F|H|Hz|Ω|V|W|A)|[kM]?ohms?|[pnuµμkM])$/iu;
const DEFAULT_UNITS: Readonly<Partial<Record<ColumnRole, string>>> = { tolerance: '%', voltage: 'V', power: 'W', current: 'A' };

/** The cells that tell of the part, by field, with the units that stand in headers or in a column of their own. */
export function partFields(cells: readonly RoleCell[]): NonNullable<PartHints['fields']> {
  const unitCell = cellsOf(cells, 'unit').find((text) => UNIT.test(text));
  const fields: Partial<Record<ReadField, string>> = {};
  for (const role of CELL_FIELDS) {
    const texts = cells
      .filter(({ column, text }) => column.role === role && !isLink(text))
      .map(({ column, text }) => withUnit(text, column, unitCell));
    if (texts.length > 0) fields[role] = texts.join(', ');
  }
  return fields;
}

function withUnit(text: string, column: ColumnGuess, unitCell: string | undefined): string {
  if (!BARE.test(text)) return text;
  const unit = (column.role === 'value' ? unitCell : undefined) ?? column.unit ?? DEFAULT_UNITS[column.role];
  return unit ? `${text} ${unit}` : text;
}

/** The kind that the header of the row's value states: a cell under `Resistance` is a resistor's. */
export function kindByHeader(cells: readonly RoleCell[]): Kind | undefined {
  const word = cells.find(({ column }) => column.role === 'value' && column.kind)?.column.kind;
  return KINDS.find((kind) => kind === word);
}
