import { bagView } from '#api/bag-answers.ts';
import { readBagHistory, type BagEntry } from '#db/history.ts';
import { readBag } from '#db/read-stock.ts';
import { cliText } from '#say/en/cli.ts';
import { sayPart } from '#say/en/said.ts';
import { oneBag } from '../bag-words.ts';
import { defineCommand, ENDED, JSON_OPTION, refused } from '../command.ts';
import { withLab } from '../lab.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import { writeInstant } from '../write-instant.ts';

const COLUMNS: readonly ColumnOf<BagEntry>[] = [
  { head: 'when', cell: (entry) => writeInstant(entry.happenedAt) },
  { head: 'what', cell: (entry) => (entry.undoes ? `undone: ${entry.kind}` : entry.kind) },
  { head: 'moved', cell: (entry) => entry.delta, right: true },
  { head: 'on hand', cell: (entry) => entry.onHand, right: true },
  { head: 'who', cell: (entry) => entry.who },
  { head: 'act', cell: (entry) => entry.act.slice(0, 8) },
  { head: 'note', cell: (entry) => entry.note ?? '', gives: true },
];

export const command = defineCommand({
  name: 'bag',
  summary: 'Show a bag: what is in it, how many, and all that moved.',
  usage: 'bagatelle bag BAG',
  example: 'bagatelle bag 12',
  options: { json: JSON_OPTION },
  async run({ words, options, terminal }) {
    const number = oneBag(words);
    if (!number.ok) return number.ending;
    const read = await withLab((lab) =>
      lab.read(async (tx) => ({ bag: await readBag(tx, number.value), entries: await readBagHistory(tx, number.value) })),
    );
    if (!read.bag) return refused({ code: 'no-such-bag', args: { bag: number.value } });
    const bag = bagView(read.bag, sayPart(read.bag.part));
    if (options.json) {
      terminal.out(JSON.stringify({ ...bag, movements: read.entries }));
      return ENDED;
    }
    terminal.out(cliText('bag-head', bag));
    terminal.out(cliText('bag-holds', bag));
    for (const line of tableLines(read.entries, COLUMNS, terminal.columns)) terminal.out(line);
    return ENDED;
  },
});
