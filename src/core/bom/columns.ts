import { CELL_FIELDS } from '#core/part/hints.ts';

/** What a column can mean. The first group goes to the reader of parts, the second to the row, the last is passed over. */
export const COLUMN_ROLES = [
  ...CELL_FIELDS,
  'refs',
  'quantity',
  'unit',
  'not-fitted',
  'fitted',
  'bag',
  'location',
  'box',
  'place',
  'supplier',
  'alternates',
  'note',
  'stock-mark',
  'price',
  'link',
  'index',
  'other',
] as const;
export type ColumnRole = (typeof COLUMN_ROLES)[number];

/** Why a column is taken for what it is. */
export type ColumnEvidence = 'told' | 'header' | 'header-part' | 'header-and-cells' | 'cells';

/** A column and what it was taken for; `column` counts from 1. */
export interface ColumnGuess {
  readonly column: number;
  readonly header: string;
  readonly role: ColumnRole;
  readonly evidence: ColumnEvidence;
  /** 0 to 1 */
  readonly confidence: number;
  /** unit that the header states for bare numbers: `Capacitance (uF)` → `uF` */
  readonly unit?: string;
  /** kind of part that the header states: `Resistance` → `resistor` */
  readonly kind?: string;
  /** references stand at the start of its cells */
  readonly refsLead?: true;
}

export function isColumnRole(word: string): word is ColumnRole {
  return (COLUMN_ROLES as readonly string[]).includes(word);
}

/**
 * A person's correction of the columns: `"2=value, 3=footprint"` → `{2: 'value', 3: 'footprint'}`.
 * The column is its number from 1 or the text of its header. Null where a word is no role.
 */
export function parseColumnChoice(text: string): ReadonlyMap<string, ColumnRole> | null {
  const choice = new Map<string, ColumnRole>();
  for (const piece of text.split(/[,;]/)) {
    if (!piece.trim()) continue;
    const [column = '', role = ''] = piece.split('=').map((word) => word.trim());
    if (!column || !isColumnRole(role)) return null;
    choice.set(column.toLowerCase(), role);
  }
  return choice;
}

/** What a correction names that is no column: neither its number nor its header. */
export function strangersTo(told: ReadonlyMap<string, ColumnRole> | undefined, columns: readonly ColumnGuess[]): string[] {
  const known = new Set(columns.flatMap(({ column, header }) => [String(column), header.toLowerCase()]));
  return [...(told?.keys() ?? [])].filter((name) => !known.has(name));
}
