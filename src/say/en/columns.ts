import type { CellEvidence } from '#core/bom/column-evidence.ts';
import type { ColumnGuess, ColumnRole } from '#core/bom/columns.ts';
import { counted } from './ui.ts';

/** What a column of a list or a BOM can hold, in plain words. */
const ROLES: Readonly<Record<ColumnRole, string>> = {
  value: 'value',
  footprint: 'footprint',
  package: 'package',
  partNumber: 'part number',
  maker: 'maker',
  description: 'what it is, in words',
  tolerance: 'tolerance',
  voltage: 'voltage',
  power: 'power',
  current: 'current',
  dielectric: 'dielectric',
  technology: 'technology',
  category: 'kind of part',
  device: 'name of a symbol',
  supplierNumber: 'order number',
  refs: 'refs',
  quantity: 'how many',
  unit: 'unit of the value',
  'not-fitted': 'mark of what is not fitted',
  fitted: 'fitted, yes or no',
  bag: 'bag number',
  location: 'bag or place',
  box: 'box',
  place: 'place in the box',
  supplier: 'supplier',
  alternates: 'other parts allowed',
  note: 'note',
  'stock-mark': 'mark of a rating',
  price: 'price',
  link: 'link',
  index: 'line number',
  other: 'leave out',
};

export function columnWord(role: ColumnRole): string {
  return ROLES[role];
}

/** How sure the reading of a column is, by where its evidence comes from. */
export function columnSure({ role, evidence, confidence }: ColumnGuess): 'sure' | 'likely' | 'check' | 'told' | 'kept' {
  if (evidence === 'told') return 'told';
  if (role === 'note' || role === 'supplier') return 'kept';
  if (role === 'other') return 'likely';
  if (evidence === 'header-and-cells' || (evidence === 'header' && confidence >= 0.8)) return 'sure';
  return evidence === 'cells' && confidence < 0.6 ? 'check' : 'likely';
}

/** Why a column was taken for what it is: `its head says so; 18 of 21 read as a value`. */
export function sayColumn(column: ColumnGuess, { said, fit }: CellEvidence): string {
  const { role, evidence, header } = column;
  const cells =
    said === 0
      ? 'its cells are empty'
      : fit === null
        ? counted(said, 'cell says something', 'cells say something')
        : fitText(role, said, fit);
  if (evidence === 'told') return `you said so; ${cells}`;
  if (role === 'other') return said === 0 ? 'its cells are empty' : `nothing says what it holds, so it is left out; ${cells}`;
  if (evidence === 'cells' || header === '') return `by its cells alone: ${cells}`;
  return `${evidence === 'header-part' ? 'a word of its head says so' : 'its head says so'}; ${cells}`;
}

function fitText(role: ColumnRole, said: number, fit: number): string {
  const what =
    role === 'refs'
      ? 'read as refs'
      : role === 'quantity'
        ? 'are counts'
        : `read as ${role === 'description' ? 'words' : `a ${ROLES[role]}`}`;
  return fit === said ? `all ${said} ${what}` : `${fit} of ${said} ${what}`;
}
