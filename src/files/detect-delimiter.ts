import { readDelimited } from './delimited.ts';
import type { CountHeaderWords, PlainRow } from './plain.ts';

export interface Delimiting {
  readonly delimiter: string;
  /** most words of a header that one row shows when cut so */
  readonly headerWords: number;
}

const DELIMITERS = [',', ';', '\t', '|'] as const;
/** enough to see the shape of a table */
const SAMPLE = 300;

/** The character of an Excel hint line: `sep=;` → `;`. */
export function separatorHint(line: string): string | null {
  return /^"?sep=(.)"?$/i.exec(line.trim())?.[1] ?? (/^"?sep=\t/i.test(line) ? '\t' : null);
}

/**
 * The delimiter that cuts the lines into the most regular table, or null where none does.
 * A row that then reads as a header weighs most; equal scores keep the order comma, semicolon, tab, bar.
 */
export function detectDelimiter(lines: readonly string[], countHeaderWords: CountHeaderWords): Delimiting | null {
  let best: (Delimiting & { score: number }) | null = null;
  for (const delimiter of DELIMITERS) {
    const rows = readDelimited(lines, delimiter, 0, Math.min(SAMPLE, lines.length)).filter((row) =>
      row.cells.some((cell) => cell.trim()),
    );
    const headerWords = Math.max(0, ...rows.slice(0, 60).map((row) => (row.cells.length > 1 ? countHeaderWords(row.cells) : 0)));
    const { width, share } = regularity(rows);
    if (width < 2 || (share < 0.55 && headerWords < 2)) continue;
    const score = headerWords * 2 + share * 3 + Math.min(width, 8) / 8;
    if (!best || score > best.score) best = { delimiter, headerWords, score };
  }
  return best;
}

/** The commonest number of cells above one, and the share of rows that have it. */
function regularity(rows: readonly PlainRow[]): { width: number; share: number } {
  const counts = new Map<number, number>();
  for (const { cells } of rows) counts.set(cells.length, (counts.get(cells.length) ?? 0) + 1);
  counts.delete(1);
  let width = 0;
  let most = 0;
  for (const [cells, count] of counts) {
    if (count > most) [width, most] = [cells, count];
  }
  return { width, share: rows.length > 0 ? most / rows.length : 0 };
}
