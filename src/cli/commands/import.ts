import { importList, previewImport } from '#actions/import-list.ts';
import { clashOf, type ImportPlan } from '#actions/plan-import.ts';
import { plannedBag } from '#api/files.ts';
import { cliText } from '#say/en/cli.ts';
import { doubtText } from '#say/en/doubts.ts';
import { oneWord } from '../bag-words.ts';
import { columnChoice, COLUMNS_OPTION } from '../column-words.ts';
import { defineCommand, ENDED, refused, type Ending } from '../command.ts';
import { withLab } from '../lab.ts';
import { withProgress } from '../progress.ts';
import { tellColumns, tellDoubts } from '../reading-words.ts';
import { readPath } from '../read-path.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import type { Terminal } from '../terminal.ts';
import { WRITE_OPTIONS, writeActIn } from '../write-act.ts';

type Planned = ImportPlan['bags'][number];

const COLUMNS: readonly ColumnOf<Planned>[] = [
  { head: 'row', cell: (bag) => bag.row.row, right: true },
  { head: 'bag', cell: (bag) => bag.number, right: true },
  {
    head: 'quantity',
    cell: (bag) => (bag.toCount ? 'to count' : bag.sure < bag.quantity ? `~${bag.quantity}` : bag.quantity),
    right: true,
  },
  { head: 'box', cell: (bag) => bag.box },
  { head: 'place', cell: (bag) => bag.place },
  { head: 'kind', cell: (bag) => bag.row.part.kind },
  { head: 'text', cell: (bag) => bag.text, gives: true },
];

export const command = defineCommand({
  name: 'import',
  summary: 'Make bags from a stock list, in one act that can be taken back.',
  usage: 'bagatelle import LIST [--dry-run] [--box BOX] [--columns "1=bag,2=place"]',
  example: 'bagatelle import stock.csv --dry-run',
  options: {
    'dry-run': { type: 'switch', say: 'show what would be done, and write nothing' },
    box: { type: 'word', value: 'BOX', say: 'box for rows that name none' },
    columns: COLUMNS_OPTION,
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    const file = oneWord(words, 'LIST');
    if (!file.ok) return file.ending;
    const told = columnChoice(options.columns);
    if (!told.ok) return told.ending;
    const read = await readPath(file.value, told.value);
    if (!read.ok) return refused(read.refusal);
    const what = { rows: read.value.rows, ...(options.box !== undefined && { box: options.box }) };
    return withLab((lab) =>
      withProgress(terminal, cliText('importing', { rows: what.rows.length }), async () => {
        if (options['dry-run']) {
          tellColumns(terminal, read.value.columns);
          tellDoubts(terminal, what.rows);
          return tellPlan(terminal, await lab.read((tx) => previewImport(tx, what)), options.json === true);
        }
        const doubted = what.rows.filter(({ doubts }) => doubts.length > 0).length;
        if (doubted > 0) terminal.say(cliText('import-doubts', { rows: doubted }));
        return writeActIn(lab, terminal, options, {
          action: importList,
          input: (told) => ({ ...told, ...what, source: file.value }),
          tell: (result) => [cliText('imported', { ...result, skipped: result.skipped.length })],
        });
      }),
    );
  },
});

function tellPlan(terminal: Terminal, plan: ImportPlan, json: boolean): Ending {
  if (json)
    for (const bag of plan.bags)
      terminal.out(
        JSON.stringify({
          ...plannedBag(bag),
          doubts: bag.row.doubts.map((doubt) => ({ field: doubt.field, ...doubtText(doubt) })),
        }),
      );
  else for (const line of tableLines(plan.bags, COLUMNS, terminal.columns)) terminal.out(line);
  for (const { row, of } of plan.duplicates) terminal.say(cliText('import-duplicate', { row, of }));
  for (const row of plan.skipped) terminal.say(cliText('import-skipped', { row }));
  const clash = clashOf(plan);
  if (clash) return refused(clash);
  terminal.say(cliText('import-dry', { bags: plan.bags.length }));
  return ENDED;
}
