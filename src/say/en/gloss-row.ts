import type { ReadRow } from '#core/bom/bom.ts';
import type { ColumnRole } from '#core/bom/columns.ts';
import type { CellGloss } from '#core/bom/gloss-row.ts';
import { columnWord } from './columns.ts';
import { sayGloss, type GlossWords } from './gloss.ts';
import { counted } from './ui.ts';

/** A row's gloss in words: what is typed in each cell above what it was read as. */
export function sayRowGloss(row: ReadRow, glosses: readonly CellGloss[]): GlossWords[] {
  return glosses.flatMap((gloss): GlossWords[] =>
    gloss.of === 'part'
      ? sayGloss(gloss.pieces, row.part.kind)
      : [{ typed: gloss.typed, means: meansOf(row, gloss.role, gloss.doubtful), how: gloss.doubtful ? 'doubt' : 'read' }],
  );
}

function meansOf(row: ReadRow, role: ColumnRole, doubtful: boolean): string {
  const means = said(row, role);
  return doubtful ? `${means}?` : means;
}

function said(row: ReadRow, role: ColumnRole): string {
  switch (role) {
    case 'quantity':
      return row.quantity === null ? 'how many' : counted(row.quantity, 'piece', 'pieces');
    case 'refs':
      return counted(row.refs.length, 'ref', 'refs');
    case 'fitted':
    case 'not-fitted':
      return row.fitted ? 'fitted' : 'not fitted';
    default:
      return columnWord(role);
  }
}
