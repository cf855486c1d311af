import { LIMITS } from './limits.ts';
import type { PlainRow } from './plain.ts';

interface Parsed {
  readonly cells: string[];
  /** index of the line after the record */
  readonly next: number;
}

/**
 * Records of delimited text after RFC 4180 (2.1–2.7), each with its physical line.
 * Blanks before an opening and after a closing quote are dropped; a quote inside an unquoted cell is literal (`3.5" disk`).
 * A quote that never closes spoils its own line alone: that line is cut at the delimiters and marked `unclosed`.
 * `"C1,C2",100n` with `,` → `['C1,C2', '100n']`.
 */
export function readDelimited(lines: readonly string[], delimiter: string, first = 0, end = lines.length): PlainRow[] {
  const rows: PlainRow[] = [];
  let at = first;
  while (at < end) {
    const record = readRecord(lines, at, end, delimiter);
    if (record) rows.push({ row: at + 1, cells: record.cells });
    else
      rows.push({
        row: at + 1,
        cells: (lines[at] ?? '').split(delimiter).map((cell) => cell.replace(/^\s*"|"\s*$/g, '')),
        unclosed: true,
      });
    at = record ? record.next : at + 1;
  }
  return rows;
}

function readRecord(lines: readonly string[], start: number, end: number, delimiter: string): Parsed | null {
  const line = lines[start] ?? '';
  if (!line.includes('"')) return { cells: line.split(delimiter), next: start + 1 };
  const cells: string[] = [];
  let text = line;
  let next = start + 1;
  let at = 0;
  for (;;) {
    const open = openingQuote(text, at, delimiter);
    if (open < 0) {
      const stop = text.indexOf(delimiter, at);
      cells.push(text.slice(at, stop < 0 ? undefined : stop));
      if (stop < 0) return { cells, next };
      at = stop + 1;
      continue;
    }
    let close = closingQuote(text, open + 1);
    while (close < 0) {
      if (next >= end || next - start > LIMITS.quotedLines) return null;
      const from = text.length;
      text += `\n${lines[next] ?? ''}`;
      next += 1;
      close = closingQuote(text, from);
    }
    cells.push(text.slice(open + 1, close).replaceAll('""', '"'));
    at = close + 1;
    while (at < text.length && text[at] !== delimiter && isBlank(text[at])) at += 1;
    if (at >= text.length) return { cells, next };
    if (text[at] !== delimiter) return null;
    at += 1;
  }
}

/** Where a quoted cell opens at or after `at`, blanks skipped; −1 where the cell is not quoted. */
function openingQuote(text: string, at: number, delimiter: string): number {
  let open = at;
  while (text[open] !== delimiter && isBlank(text[open])) open += 1;
  return text[open] === '"' ? open : -1;
}

function isBlank(char: string | undefined): boolean {
  return char === ' ' || char === '\t' || char === '\r';
}

/** The quote that ends a cell, doubled ones passed over; −1 where there is none. */
function closingQuote(text: string, from: number): number {
  let at = text.indexOf('"', from);
  while (at >= 0 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  return at;
}
