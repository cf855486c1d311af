const segments = new Intl.Segmenter('en', { granularity: 'grapheme' });
/** East Asian Wide and Fullwidth blocks and emoji (Unicode Standard Annex 11): two columns each. */
const WIDE =
  /^(?:[\u1100-\u115F\u2E80-\u303E\u3041-\uA4CF\uAC00-\uD7A3\uF900-\uFAFF\uFE30-\uFE6F\uFF00-\uFF60\uFFE0-\uFFE6]|\p{Extended_Pictographic}\uFE0F?|[\u{1F300}-\u{1FAFF}\u{20000}-\u{3FFFD}])/u;
// oxlint-disable-next-line no-control-regex -- the escape that colours begin with is what is to be left out
const COLOUR = /\u001B\[[\d;]*m/g;

export interface ColumnOf<Row> {
  readonly head: string;
  readonly cell: (row: Row) => string | number | null;
  /** numbers stand at the right */
  readonly right?: boolean;
  /** the column that gives way when the table is wider than the terminal */
  readonly gives?: boolean;
}

/** Columns that a text takes in a terminal: `'4.7 kΩ'` -> 6, `'抵抗'` -> 4. */
export function widthOf(text: string): number {
  let width = 0;
  for (const { segment } of segments.segment(text.replace(COLOUR, ''))) width += WIDE.test(segment) ? 2 : 1;
  return width;
}

/** Cuts to a width, with an ellipsis where something is lost. */
export function cut(text: string, width: number): string {
  if (widthOf(text) <= width) return text;
  let kept = '';
  let used = 0;
  for (const { segment } of segments.segment(text)) {
    const wide = widthOf(segment);
    if (used + wide > width - 1) break;
    kept += segment;
    used += wide;
  }
  return `${kept}…`;
}

/** Texts of files may hold line breaks and controls: a table keeps to its line. */
function oneLine(value: string | number | null): string {
  return value === null ? '–' : String(value).replaceAll(/\p{Cc}+/gu, (run) => (run.startsWith('\u001B') ? run : ' '));
}

function pad(text: string, width: number, right: boolean): string {
  const blank = ' '.repeat(Math.max(0, width - widthOf(text)));
  return right ? blank + text : text + blank;
}

/** Lines of a table: a head, then a line for each row. Nothing for no rows. */
export function tableLines<Row>(rows: readonly Row[], columns: readonly ColumnOf<Row>[], most: number): string[] {
  if (!rows.length) return [];
  const cells = rows.map((row) => columns.map((column) => oneLine(column.cell(row))));
  const widths = columns.map((column, at) => Math.max(widthOf(column.head), ...cells.map((line) => widthOf(line[at] ?? ''))));
  const over = widths.reduce((sum, width) => sum + width + 2, -2) - most;
  const giving = columns.findIndex((column) => column.gives);
  if (over > 0 && giving >= 0) widths[giving] = Math.max(12, (widths[giving] ?? 0) - over);
  const line = (texts: readonly string[]): string =>
    texts
      .map((text, at) => pad(cut(text, widths[at] ?? 0), widths[at] ?? 0, columns[at]?.right ?? false))
      .join('  ')
      .trimEnd();
  return [line(columns.map((column) => column.head)), ...cells.map(line)];
}
