/** One record of a table: its cells, and the 1-based physical line where it starts. */
export interface PlainRow {
  readonly row: number;
  readonly cells: readonly string[];
  readonly unclosed?: boolean;
}

/** A table as it stood in a file, with the headings over it. */
export interface PlainTable {
  readonly form: 'delimited' | 'markdown' | 'fixed' | 'sheet' | 'items';
  readonly titles: readonly string[];
  readonly headed: boolean;
  readonly rows: readonly PlainRow[];
}
