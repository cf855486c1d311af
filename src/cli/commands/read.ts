import { tellRow } from '#actions/tell-row.ts';
import type { ReadRow } from '#core/bom/bom.ts';
import { oneWord } from '../bag-words.ts';
import { columnChoice, COLUMNS_OPTION } from '../column-words.ts';
import { defineCommand, ENDED, JSON_OPTION, refused } from '../command.ts';
import { writeRefs } from '../kit-tables.ts';
import { tellColumns, tellDoubts } from '../reading-words.ts';
import { readPath } from '../read-path.ts';
import { tableLines, type ColumnOf } from '../table.ts';

const COLUMNS: readonly ColumnOf<ReadRow>[] = [
  { head: 'row', cell: (row) => row.row, right: true },
  { head: 'refs', cell: (row) => writeRefs(row.refs) || '–' },
  { head: 'quantity', cell: (row) => row.quantity, right: true },
  { head: 'kind', cell: (row) => (row.fitted ? row.part.kind : `${row.part.kind}, not fitted`) },
  {
    head: 'location',
    cell: ({ location, box, place }) => [...new Set([location, box, place])].filter(Boolean).join(' · ') || null,
  },
  { head: 'text', cell: (row) => row.part.text, gives: true },
];

export const command = defineCommand({
  name: 'read',
  summary: 'Show how a BOM or a stock list is read; nothing is kept.',
  usage: 'bagatelle read FILE [--columns "2=value,3=footprint"]',
  example: 'bagatelle read blinker.csv --json',
  options: { columns: COLUMNS_OPTION, json: JSON_OPTION },
  async run({ words, options, terminal }) {
    const file = oneWord(words, 'FILE');
    if (!file.ok) return file.ending;
    const told = columnChoice(options.columns);
    if (!told.ok) return told.ending;
    const read = await readPath(file.value, told.value);
    if (!read.ok) return refused(read.refusal);
    const { rows, columns } = read.value;
    if (options.json) {
      for (const row of rows) terminal.out(JSON.stringify(tellRow(row)));
      return ENDED;
    }
    for (const line of tableLines(rows, COLUMNS, terminal.columns)) terminal.out(line);
    tellColumns(terminal, columns);
    tellDoubts(terminal, rows);
    return ENDED;
  },
});
