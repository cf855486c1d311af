import type { ReadRow } from '#core/bom/bom.ts';
import type { ColumnEvidence, ColumnGuess } from '#core/bom/columns.ts';
import { cliText } from '#say/en/cli.ts';
import { doubtText } from '#say/en/doubts.ts';
import type { Terminal } from './terminal.ts';

const EVIDENCE: Readonly<Record<ColumnEvidence, string>> = {
  told: 'as you say',
  header: 'by its header',
  'header-part': 'by a word of its header',
  'header-and-cells': 'by its header and cells',
  cells: 'by its cells',
};

/** Says what each column was taken for, and why. */
export function tellColumns(terminal: Terminal, columns: readonly ColumnGuess[]): void {
  if (columns.length === 0) return;
  const said = columns.map(
    ({ column, header, role, evidence }) =>
      `${column} ${header ? `'${header}' ` : ''}= ${role}${role === 'other' ? '' : ` (${EVIDENCE[evidence]})`}`,
  );
  terminal.say(cliText('columns-taken', { columns: said.join(', ') }));
}

/** Says every doubt of every row, with what would settle it. */
export function tellDoubts(terminal: Terminal, rows: readonly ReadRow[]): void {
  for (const { row, doubts } of rows)
    for (const doubt of doubts) terminal.say(cliText('doubt', { row, field: doubt.field, ...doubtText(doubt) }));
}

/** Says in one line for each doubted row what is doubtful about it. */
export function tellDoubtedRows(terminal: Terminal, rows: readonly ReadRow[]): void {
  for (const { row, doubts } of rows) {
    if (doubts.length === 0) continue;
    terminal.say(
      cliText('row-doubts', { row, doubts: doubts.map((doubt) => `${doubt.field}: ${doubtText(doubt).why}`).join(' ') }),
    );
  }
}

/** Doubts as machines get them: those of the `read` contract, each with its row. */
export function doubtsJson(rows: readonly ReadRow[]): object[] {
  return rows.flatMap(({ row, doubts }) => doubts.map((doubt) => ({ row, field: doubt.field, ...doubtText(doubt) })));
}
