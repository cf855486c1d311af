import type { ColumnGuess } from './columns.ts';
import type { Section } from './sections.ts';

type SectionRow = Section['rows'][number];

/**
 * A row that holds nothing but references goes on from the row above, where that one ends with a comma:
 * `12 | C1,C2, | 100n` and below ` | C3,C4 | ` are one row.
 */
export function joinContinued(rows: readonly SectionRow[], columns: readonly ColumnGuess[]): SectionRow[] {
  const refs = columns.findIndex(({ role }) => role === 'refs');
  if (refs < 0) return [...rows];
  const out: SectionRow[] = [];
  for (const row of rows) {
    const before = out.at(-1);
    const { cells } = row.plain;
    const above = before?.plain.cells[refs]?.trim() ?? '';
    const onlyRefs = (cells[refs] ?? '').trim() !== '' && cells.every((cell, at) => at === refs || cell.trim() === '');
    if (before && onlyRefs && /[,;]$/.test(above)) {
      const joined = before.plain.cells.map((cell, at) => (at === refs ? `${above} ${(cells[refs] ?? '').trim()}` : cell));
      out[out.length - 1] = { ...before, plain: { ...before.plain, cells: joined } };
    } else out.push(row);
  }
  return out;
}
