import type { DoubtField } from '#core/part/doubt.ts';
import { glossPart, type GlossPiece } from '#core/part/gloss.ts';
import { CELL_FIELDS } from '#core/part/hints.ts';
import type { FactKey } from '#core/part/part.ts';
import type { ReadRow } from './bom.ts';
import type { ColumnRole } from './columns.ts';
import type { RoleCell } from './row-cells.ts';

/** A cell of a row over what it was read as: pieces of the part, or what its column means for the row. */
export type CellGloss =
  | { readonly of: 'part'; readonly pieces: readonly GlossPiece[] }
  | { readonly of: 'row'; readonly role: ColumnRole; readonly typed: string; readonly doubtful: boolean };

const PART_ROLES: ReadonlySet<ColumnRole> = new Set<ColumnRole>(CELL_FIELDS);
const SILENT: ReadonlySet<ColumnRole> = new Set<ColumnRole>([
  'other',
  'index',
  'link',
  'price',
  'unit',
  'category',
  'device',
  'supplierNumber',
  'stock-mark',
]);
const FACT_OF: Readonly<Partial<Record<ColumnRole, readonly FactKey[]>>> = {
  value: ['value'],
  tolerance: ['tolerance-low', 'tolerance-high'],
  voltage: ['voltage', 'voltage-kind'],
  power: ['power'],
  current: ['current'],
  dielectric: ['dielectric'],
  technology: ['technology'],
  package: ['package'],
  footprint: ['package'],
  partNumber: ['partNumber'],
  maker: ['maker'],
};
const FIELD_OF: Readonly<Partial<Record<ColumnRole, DoubtField>>> = {
  quantity: 'quantity',
  refs: 'refs',
  bag: 'location',
  location: 'location',
  place: 'location',
  box: 'location',
  supplier: 'supplier',
  fitted: 'fitted',
  'not-fitted': 'fitted',
};

/** What is written in a row over how it was read, cell by cell; without cells of their own, the text of the part. */
export function glossRow(row: ReadRow, cells: readonly RoleCell[] | undefined): CellGloss[] {
  const { part, doubts } = row;
  if (!cells) return [{ of: 'part', pieces: glossPart(part.text, part, doubts) }];
  const glosses = cells
    .filter(({ column }) => !SILENT.has(column.role))
    .map(({ column: { role }, text }): CellGloss => {
      if (PART_ROLES.has(role)) return { of: 'part', pieces: cellPieces(row, role, text) };
      const field = FIELD_OF[role];
      return { of: 'row', role, typed: text, doubtful: field !== undefined && doubts.some((doubt) => doubt.field === field) };
    });
  const told = new Set(
    glosses.flatMap((gloss) => (gloss.of === 'part' ? gloss.pieces.flatMap(({ facts }) => facts.map(({ key }) => key)) : [])),
  );
  const untold = glossPart('', part, doubts).filter(
    ({ how, facts }) => how === 'filled' && facts.some(({ key }) => !told.has(key)),
  );
  return untold.length > 0 ? [...glosses, { of: 'part', pieces: untold }] : glosses;
}

/** The pieces of one cell; what only its column explains (`4.7` under `Capacitance (µF)`) was read all the same. */
function cellPieces({ part, doubts }: ReadRow, role: ColumnRole, text: string): readonly GlossPiece[] {
  const pieces = glossPart(text, part, doubts).filter(({ how, typed }) => how !== 'filled' && typed !== '');
  const facts = (FACT_OF[role] ?? []).flatMap((key) => part.facts[key] ?? []);
  if (facts.length === 0 || !pieces.every(({ how }) => how === 'unread')) return pieces;
  const doubt = doubts.find(({ field }) => field === role || (role === 'value' && field === 'unit')) ?? null;
  return [{ typed: text, how: doubt ? 'doubt' : 'read', facts, kind: null, words: [], doubt }];
}
