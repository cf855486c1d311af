import type { Doubt, DoubtField } from '#core/part/doubt.ts';
import { isBlank } from './cell-shapes.ts';

/** A rating that heads a column of have-it marks or counts: `16V Qty` → voltage `16V`; `1/4W` → power; `0805` → package. */
export interface Rating {
  readonly field: 'voltage' | 'power' | 'package';
  readonly text: string;
}

/** The rating of a header that is nothing but a rating, perhaps with a word for quantity; else null. */
export function ratingOf(header: string): Rating | null {
  const text = header
    .trim()
    .replace(/\s*[([]?\b(?:qty|quantity|pcs|count|stk|stück|anzahl|menge)\b\.?[)\]]?\s*$/i, '')
    .trim();
  if (/^\d+(?:[.,]\d+)?\s*k?V(?:DC|AC)?$/i.test(text)) return { field: 'voltage', text };
  if (/^\d+(?:\/\d+|[.,]\d+)?\s*m?W$/i.test(text)) return { field: 'power', text };
  if (/^(?:0201|0402|0603|0805|1206|1210|2512)$/.test(text)) return { field: 'package', text };
  return null;
}

export interface MarkReading {
  readonly rating: Rating | null;
  /** the cell under it, a count or a mark */
  readonly cell: string;
  readonly doubts: readonly Doubt[];
}

/**
 * What a row of a matrix says: with one column marked, its rating holds for the row; with several, the row stands for
 * several stock lines, and none of them is taken.
 */
export function readMarks(cells: readonly { readonly header: string; readonly cell: string }[]): MarkReading {
  const marked = cells.filter(({ cell }) => !isBlank(cell) && !/^(?:0|n|no|nein)$/i.test(cell.trim()));
  const [only] = marked;
  if (marked.length === 1 && only) return { rating: ratingOf(only.header), cell: only.cell.trim(), doubts: [] };
  const ratings = marked.map(({ header }) => ratingOf(header)).filter((rating) => rating !== null);
  const [first, second] = ratings;
  if (!first || !second) return { rating: null, cell: '', doubts: [] };
  const several = (field: DoubtField): Doubt => ({
    field,
    code: 'two-readings',
    args: { text: ratings.map(({ text }) => text).join(', '), taken: first.text, other: second.text },
  });
  return { rating: null, cell: '', doubts: [several(first.field), several('quantity')] };
}
