import type { Kind } from './part.ts';

/** What a cell of a row is about, as far as a part is concerned. */
export const CELL_FIELDS = [
  'value',
  'footprint',
  'package',
  'partNumber',
  'maker',
  'description',
  'tolerance',
  'voltage',
  'power',
  'current',
  'dielectric',
  'technology',
  'category',
  'device', // name of a symbol in a parts library: evidence of kind and package, rarely a part number
  'supplierNumber', // read only for a maker's ordering code that stands in the wrong column
] as const;

/** `context`: a section heading, the title of the file or of the column, which states facts for every row under it. */
export const READ_FIELDS = [...CELL_FIELDS, 'context'] as const;
export type ReadField = (typeof READ_FIELDS)[number];

/**
 * What is known beside the text. With `fields` the cells are read, each by its meaning, and `text` is only kept;
 * without `fields`, `text` is read as a description in free words.
 */
export interface PartHints {
  readonly refs?: readonly string[];
  readonly kind?: Kind;
  readonly fields?: Readonly<Partial<Record<ReadField, string>>>;
}
