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

/**
 * What is written in a row over how it was read, cell by cell; the text of the part where it has no cells, or was told as a whole.
 */
export function glossRow(row: ReadRow, cells: readonly RoleCell[] | undefined, whole = false): CellGloss[] {
  const { part, doubts } = row;
  const text: CellGloss = { of: 'part', pieces: glossPart(part.text, part, doubts) };
  if (!cells) return [text];
  const said = cells.filter(({ column }) => !SILENT.has(column.role));
  const ofRow = (cell: RoleCell): boolean => !PART_ROLES.has(cell.column.role);
  if (whole) return [text, ...said.filter(ofRow).map((cell) => rowCell(row, cell))];
  const glosses = said.map((cell): CellGloss =>
    ofRow(cell) ? rowCell(row, cell) : { of: 'part', pieces: cellPieces(row, cell.column.role, cell.text) },
  );
  return [...kindOnce(glosses), ...unsaid(row, glosses)];
}

function rowCell({ doubts }: ReadRow, { column: { role }, text }: RoleCell): CellGloss {
  const field = FIELD_OF[role];
  const doubtful = field !== undefined && doubts.some((doubt) => doubt.field === field);
  return { of: 'row', role, typed: text, doubtful };
}

const piecesOf = (glosses: readonly CellGloss[]): GlossPiece[] =>
  glosses.flatMap((gloss) => (gloss.of === 'part' ? gloss.pieces : []));

/** Each cell by itself says the kind; it stands once, with the word that names it, else with the value, else with what comes first. */
function kindOnce(glosses: readonly CellGloss[]): CellGloss[] {
  const telling = piecesOf(glosses).filter(({ kind }) => kind !== null);
  const bare = ({ facts, words }: GlossPiece): boolean => facts.length === 0 && words.length === 0;
  const one =
    telling.find(bare) ?? telling.find(({ facts }) => facts.some(({ key }) => key === 'value')) ?? telling.find(Boolean);
  const once = (piece: GlossPiece): GlossPiece => (piece === one || bare(piece) ? piece : { ...piece, kind: null });
  return glosses.map((gloss) => (gloss.of === 'part' ? { ...gloss, pieces: gloss.pieces.map(once) } : gloss));
}

/** What the part has and no cell says, and doubts that are about no cell. */
function unsaid({ part, doubts }: ReadRow, glosses: readonly CellGloss[]): CellGloss[] {
  const pieces = piecesOf(glosses);
  const said = new Set(pieces.flatMap(({ facts }) => facts.map(({ key }) => key)));
  const variantSaid = pieces.some(({ words }) => words.length > 0);
  const shown = new Set(pieces.map(({ doubt }) => doubt));
  const silent = glossPart('', part, doubts).flatMap((piece): GlossPiece[] => {
    if (piece.how === 'doubt') return piece.doubt?.field === 'kind' && !shown.has(piece.doubt) ? [piece] : [];
    const facts = piece.facts.filter(({ key }) => !said.has(key) && !(key === 'variant' && variantSaid));
    return facts.length > 0 ? [{ ...piece, facts }] : [];
  });
  return silent.length > 0 ? [{ of: 'part', pieces: silent }] : [];
}

/** The pieces of one cell; what only its column explains (`4.7` under `Capacitance (µF)`) was read all the same. */
function cellPieces({ part, doubts }: ReadRow, role: ColumnRole, text: string): readonly GlossPiece[] {
  const pieces = glossPart(text, part, doubts).filter(({ how, typed }) => how !== 'filled' && typed !== '');
  const facts = (FACT_OF[role] ?? []).flatMap((key) => part.facts[key] ?? []);
  if (facts.length === 0 || !pieces.every(({ how }) => how === 'unread')) return pieces;
  const doubt = doubts.find(({ field }) => field === role || (role === 'value' && field === 'unit')) ?? null;
  return [{ typed: text, how: doubt ? 'doubt' : 'read', facts, kind: null, words: [], doubt }];
}
