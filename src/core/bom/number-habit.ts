import type { ColumnGuess, ColumnRole } from './columns.ts';

/** How a file writes decimals: `4,7` and `1.000` for a thousand, or `4.7` and `1,000`; null where nothing shows it. */
export type NumberHabit = 'comma' | 'point' | null;

const NUMBERS: ReadonlySet<ColumnRole> = new Set<ColumnRole>([
  'value',
  'quantity',
  'price',
  'tolerance',
  'voltage',
  'power',
  'current',
]);
const WORDS: ReadonlySet<ColumnRole> = new Set<ColumnRole>(['description', 'note']);
/** decimals that no thousands mark can be: one, two or more than three places, or a mark of each sort */
const COMMA = /(?<![\w.,])(?:\d+,(?:\d{1,2}|\d{4,})|\d{1,3}(?:\.\d{3})+,\d+|0,\d+)(?![\d.,])/g;
const POINT = /(?<![\w.,])(?:\d+\.(?:\d{1,2}|\d{4,})|\d{1,3}(?:,\d{3})+\.\d+|0\.\d+)(?![\d.,])/g;

/**
 * The habit that most decimals of a file show: columns of numbers first, words where those are silent. `4,7` in one cell makes
 * `1.000` in another a thousand. Common practice (ISO 80000-1, 7.3.2 allows either sign), no rule.
 */
export function habitOf(
  rows: readonly { readonly cells: readonly string[]; readonly columns: readonly ColumnGuess[] }[],
): NumberHabit {
  return shown(rows, NUMBERS) ?? shown(rows, WORDS);
}

function shown(rows: Parameters<typeof habitOf>[0], roles: ReadonlySet<ColumnRole>): NumberHabit {
  let balance = 0;
  for (const { cells, columns } of rows) {
    for (const { role, column } of columns) {
      const cell = roles.has(role) ? (cells[column - 1] ?? '') : '';
      if (/\d[.,]\d/.test(cell)) balance += (cell.match(COMMA)?.length ?? 0) - (cell.match(POINT)?.length ?? 0);
    }
  }
  return balance === 0 ? null : balance > 0 ? 'comma' : 'point';
}

/** frequencies are written to three places, so that a point before three figures says nothing: `16.000 MHz`, `32.768 kHz` */
const FREQUENCY = /hz|quar[tz]|crystal|xtal|oscill|oszill|resonator|кварц|晶振/i;
const THOUSANDS = /(?<![\w.,-])[1-9]\d{0,2}(?:\.\d{3})+(?![\d.,])/g;
const GROUPED = /(?<![\w.,-])[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?(?![\d,])/g;
const DECIMAL = /(?<![\w.,-])(?:[1-9]\d{0,2}(?:\.\d{3})+|\d+),\d+(?![\d.,])/g;

/** A text with its numbers as the readers know them: by commas `1.000` → `1000` and `4,7` → `4.7`; by points `1,000` → `1000`. */
export function plainNumbers(text: string, habit: NumberHabit, about = text): string {
  if (habit === null || !/\d[.,]\d/.test(text)) return text;
  if (habit === 'point') return text.replace(GROUPED, (number) => number.replaceAll(',', ''));
  const decimals = text.replace(DECIMAL, (number) => number.replaceAll('.', '').replace(',', '.'));
  return FREQUENCY.test(about) || decimals !== text ? decimals : text.replace(THOUSANDS, (number) => number.replaceAll('.', ''));
}

/** A number with one point before three figures that no other cell explains: `1.000 µF` → `1.000`, as 1 or as 1000. */
export function eitherWay(text: string, about = text): { text: string; taken: string; other: string } | null {
  const number = FREQUENCY.test(about) ? null : (text.match(THOUSANDS)?.[0] ?? null);
  return number === null ? null : { text: number, taken: String(Number(number)), other: number.replaceAll('.', '') };
}
