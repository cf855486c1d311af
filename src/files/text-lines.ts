import { readDelimited } from './delimited.ts';
import { cutWide, expandTabs, readFixedWidth } from './fixed-width.ts';
import type { CountHeaderWords, PlainRow, PlainTable } from './plain.ts';

const BULLET = /^\s*(?:[-*+•–]|\d+[.)])\s+(?:\[[ xX]\]\s+)?(?=\S)/;
const COUNTED =
  /^\s*(?:\d{1,4}\s*(?:[x×]|pcs\.?|st\.?|stk\.?|stück)?|[x×]\d{1,4})\s+\S|\S\s+(?:\(\s*[x×]?\s?\d{1,4}\s*[x×]?\s*\)|[x×]\s?\d{1,4}|\d{1,4}\s?(?:x|pcs\.?|stk\.?|stück))\s*$/i;
/** letters and a number, then more: a name and what it is */
const NAMED = /^\s*[A-Z]{1,4}\d{1,4}(?:\s*[,;/&+–-]\s*[A-Z]{0,4}\d{1,4})*\s*[:=\s–-]\s*\S/;

/** Whether a line may be the header of a table in columns of characters. */
export function isWideHeader(line: string, countHeaderWords: CountHeaderWords): boolean {
  const cells = cutWide(expandTabs(line));
  return cells.length > 2 && !line.trim().startsWith('-') && countHeaderWords(cells) >= 2;
}

/**
 * Tables, lists and runs of delimited lines in free text, in the order of the lines; all other lines are prose.
 * The last line of prose before a table is its title.
 */
export function readTextLines(raw: readonly string[], countHeaderWords: CountHeaderWords): PlainTable[] {
  const lines = raw.map(expandTabs);
  const tables: PlainTable[] = [];
  let title = '';
  for (let at = 0; at < lines.length;) {
    const line = lines[at] ?? '';
    const titles = title ? [title] : [];
    const run = isWideHeader(line, countHeaderWords) ? null : (delimitedRun(raw, at) ?? itemRun(raw, at));
    if (isWideHeader(line, countHeaderWords)) {
      const { rows, next } = readFixedWidth(lines, at, countHeaderWords);
      tables.push({ form: 'fixed', titles, headed: true, rows });
      at = next;
    } else if (run) {
      tables.push({ form: run.form, titles, headed: false, rows: run.rows });
      at = run.next;
    } else {
      if (line.trim()) title = /[\p{L}]/u.test(line) ? line.trim().replace(/^[#*=\s]+|[:=*\-\s]+$/g, '') : title;
      at += 1;
    }
  }
  return tables;
}

interface Run {
  readonly form: 'items' | 'delimited';
  readonly rows: PlainRow[];
  readonly next: number;
}

/** Two or more lines one below the other that the same delimiter cuts into the same number (3 or more) of cells. */
function delimitedRun(lines: readonly string[], start: number): Run | null {
  for (const delimiter of ['\t', ';', ','] as const) {
    const width = (lines[start] ?? '').split(delimiter).length;
    if (width < 3) continue;
    const stop = lines.findIndex((line, at) => at > start && line.split(delimiter).length !== width);
    const end = stop < 0 ? lines.length : stop;
    const words = (lines[start] ?? '').split(delimiter).map((cell) => cell.trim());
    if (end - start > 1 && words.every((cell) => cell.length < 60) && !/^[,;]\s/.test(lines[start] ?? '')) {
      const rows = readDelimited(lines, delimiter, start, end);
      if (looksTabular(rows)) return { form: 'delimited', rows, next: end };
    }
  }
  return null;
}

/** Commas of prose are followed by a blank; those of a table mostly are not. */
function looksTabular(rows: readonly PlainRow[]): boolean {
  const cells = rows.flatMap((row) => row.cells.slice(1));
  return cells.filter((cell) => !cell.startsWith(' ')).length > cells.length / 2;
}

/** A list: lines with a bullet, a count or a short name in front, or a count behind; the bullet is dropped, the rest stays. */
function itemRun(lines: readonly string[], start: number): Run | null {
  const rows: PlainRow[] = [];
  let at = start;
  for (; at < lines.length; at += 1) {
    const line = lines[at] ?? '';
    if (!BULLET.test(line) && !COUNTED.test(line) && !NAMED.test(line)) break;
    rows.push({ row: at + 1, cells: [line.replace(BULLET, '').trim()] });
  }
  return rows.length > 0 ? { form: 'items', rows, next: at } : null;
}
