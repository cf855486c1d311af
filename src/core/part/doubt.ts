/** Fields that a doubt can be about: those of the `read` contract. */
export type DoubtField =
  | 'refs'
  | 'quantity'
  | 'fitted'
  | 'kind'
  | 'value'
  | 'unit'
  | 'tolerance'
  | 'voltage'
  | 'power'
  | 'current'
  | 'dielectric'
  | 'technology'
  | 'package'
  | 'partNumber'
  | 'maker'
  | 'location'
  | 'supplier'
  | 'row';

/** Every doubt that the readers can have; `say/` holds the sentence of each. */
export type DoubtCode =
  | 'unit-assumed' // {text, unit}: a bare number read in the unit of its kind
  | 'two-readings' // {text, taken, other}
  | 'range' // {text}: a range or several values where one was wanted
  | 'code-assumed' // {text, taken, other}: figures read as a printed code
  | 'conflict' // {taken, other, place}: two places of the row disagree
  | 'kind-unclear' // {taken, other}
  | 'kind-unknown' // {text}
  | 'size-metric-or-imperial' // {text, taken, other}
  | 'implausible' // {text, taken}
  | 'quantity-not-refs' // {quantity, refs}
  | 'quantity-not-whole' // {text}
  | 'quantity-unreadable' // {text}
  | 'quantity-estimate' // {text, taken}
  | 'ref-twice' // {ref}
  | 'ref-unreadable' // {text}
  | 'column-guessed' // {column, taken}
  | 'no-header' // {}
  | 'quote-unclosed' // {row}
  | 'encoding-guessed' // {taken}
  | 'cells-uneven' // {row, expected, received}
  | 'number-taken' // {number}
  | 'bag-number' // {text, most}: a number that no bag can have
  | 'text-long'; // {length, most}: only the beginning was read

/** What a reader was not sure of, on one field. `span` is [start, end) in the text that was read. */
export interface Doubt {
  readonly field: DoubtField;
  readonly code: DoubtCode;
  readonly args: Readonly<Record<string, string | number>>;
  readonly span?: readonly [number, number];
}
