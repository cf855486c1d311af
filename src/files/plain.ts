/** How a table stood in the file; how much its shape promises differs. */
export type Form = 'delimited' | 'markdown' | 'fixed' | 'sheet' | 'items';

/** One record: its cells, and the 1-based physical line where it starts (only `\n` counts). */
export interface PlainRow {
  readonly row: number;
  readonly cells: readonly string[];
  /** a quote was opened and never closed: the line was cut at its delimiters */
  readonly unclosed?: boolean;
}

/** One table of a file, with the headings that stood over it, outermost first. */
export interface PlainTable {
  readonly form: Form;
  readonly titles: readonly string[];
  /** the first row is a header by the rules of the form (Markdown) */
  readonly headed: boolean;
  readonly rows: readonly PlainRow[];
}

export interface PlainFile {
  readonly tables: readonly PlainTable[];
  /** the encoding that was read; guessed where nothing in the file states it */
  readonly encoding: string;
  readonly encodingGuessed: boolean;
}

/** Why a file can't be read as tables; `args` name the place. */
export interface FileFault {
  readonly code: 'file-empty' | 'file-binary' | 'file-no-table' | 'file-too-large' | 'too-many-columns' | 'cell-too-long';
  readonly args: Readonly<Record<string, string | number>>;
}

export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: FileFault };

/** How many cells of a row are words of a header; told from outside, since this room knows no word of the domain. */
export type CountHeaderWords = (cells: readonly string[]) => number;

export function fault(code: FileFault['code'], args: FileFault['args'] = {}): { readonly ok: false; readonly fault: FileFault } {
  return { ok: false, fault: { code, args } };
}
