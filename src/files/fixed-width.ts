import type { CountHeaderWords, PlainRow } from './plain.ts';

/** Cells of a line that are two or more blanks apart: `Part     Value  Device` → `['Part', 'Value', 'Device']`. */
export function cutWide(line: string): string[] {
  return line.trim().split(/\s{2,}|\t+/);
}

/** Tabs to blanks, stops every eight columns, so that places in the line are places on the screen. */
export function expandTabs(line: string): string {
  if (!line.includes('\t')) return line;
  let out = '';
  for (const char of line) out += char === '\t' ? ' '.repeat(8 - (out.length % 8)) : char;
  return out;
}

/**
 * A table in columns of characters under the header at `header`: its rows, the header first, and the line after it.
 * Lines are those of the file with tabs expanded. A column starts where a header word starts and the lines below keep clear.
 */
export function readFixedWidth(
  lines: readonly string[],
  header: number,
  countHeaderWords: CountHeaderWords,
): { rows: PlainRow[]; next: number } {
  const end = endOfTable(lines, header, countHeaderWords);
  const body = lines.slice(header + 1, end).filter((line) => line.trim() && !isRule(line));
  const starts = columnStarts(lines[header] ?? '', body);
  const rows: PlainRow[] = [];
  for (let at = header; at < end; at += 1) {
    const line = lines[at] ?? '';
    if (line.trim() && !isRule(line)) rows.push({ row: at + 1, cells: cutAt(line, starts) });
  }
  return { rows, next: end };
}

/** A line of dashes or underscores under a header. */
function isRule(line: string): boolean {
  return /^[\s\-_=+|]{3,}$/.test(line);
}

/** The table goes on over one blank line if what follows is still cut into cells and is no new header or heading. */
function endOfTable(lines: readonly string[], header: number, countHeaderWords: CountHeaderWords): number {
  let at = header + 1;
  let rowsSeen = 0;
  for (; at < lines.length; at += 1) {
    const line = lines[at] ?? '';
    if (line.trim()) {
      if (rowsSeen > 0 && countHeaderWords(cutWide(line)) >= 2 && cutWide(line).length > 2) return at;
      if (!isRule(line)) rowsSeen += 1;
      continue;
    }
    const next = lines.slice(at).findIndex((later) => later.trim());
    if (next < 0) return at;
    const later = lines[at + next] ?? '';
    if (rowsSeen > 0 && (next > 1 || cutWide(later).length < 3 || countHeaderWords(cutWide(later)) >= 2)) return at;
    at += next - 1;
  }
  return at;
}

/**
 * A header word starts a column if two blanks stand before it, or if the body keeps the place before it free and starts words at it.
 * Either way most of the body must leave the place before it free.
 */
function columnStarts(header: string, body: readonly string[]): number[] {
  const starts = [0];
  for (const word of header.matchAll(/\S+/g)) {
    const at = word.index;
    if (at === 0 || header.slice(0, at).trim() === '') continue;
    const reaching = body.filter((line) => line.length > at);
    const free = reaching.filter((line) => line[at - 1] === ' ' || line[at] === ' ').length;
    const begun = reaching.filter((line) => line[at - 1] === ' ' && line[at] !== ' ').length;
    const wide = header[at - 2] === ' ' || header[at - 2] === undefined;
    if (
      wide
        ? free >= reaching.length * 0.6
        : reaching.length > 0 && free >= reaching.length * 0.95 && begun >= reaching.length * 0.6
    )
      starts.push(at);
  }
  return starts;
}

/** Cuts a line at the starts; a word that runs over a start stays whole in the cell where it began. */
function cutAt(line: string, starts: readonly number[]): string[] {
  const cells: string[] = [];
  let from = 0;
  starts.forEach((_, index) => {
    const start = starts[index + 1];
    let to = start ?? line.length;
    if (start !== undefined) while (to < line.length && line[to - 1] !== ' ' && line[to] !== ' ') to += 1;
    cells.push(line.slice(from, Math.max(from, to)).trim());
    from = Math.max(from, to);
  });
  return cells;
}
