import { readActs, type ActEntry } from '#db/history.ts';
import { deedText } from '#say/en/acts.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, JSON_OPTION, refused, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import { readWhole } from '#actions/whole.ts';
import { writeInstant } from '../write-instant.ts';

const LIMIT = '20';
const COLUMNS: readonly ColumnOf<ActEntry>[] = [
  { head: 'act', cell: (entry) => entry.act.slice(0, 8) },
  { head: 'when', cell: (entry) => writeInstant(entry.happenedAt) },
  { head: 'who', cell: (entry) => entry.who },
  { head: 'what', cell: deedText },
  {
    head: 'bags',
    cell: (entry) => `${entry.bags.join(' ')}${entry.more > 0 ? ' …' : ''}`,
  },
  {
    head: 'note',
    cell: (entry) => [entry.undoneBy ? 'taken back' : '', entry.note ?? ''].filter(Boolean).join('; '),
    gives: true,
  },
];

export const command = defineCommand({
  name: 'history',
  summary: 'List what was done, the newest first.',
  usage: 'bagatelle history [--limit N]',
  example: 'bagatelle history --limit 50',
  options: { limit: { type: 'word', value: 'N', say: `at most so many: ${LIMIT} unless said` }, json: JSON_OPTION },
  async run({ words: [extra], options, terminal }) {
    if (extra !== undefined) return wrongUsage(cliText('words-too-many', { word: extra }));
    const limit = readWhole(options.limit ?? LIMIT, '--limit', { least: 1, most: 10_000 });
    if (!limit.ok) return refused(limit.refusal);
    const acts = await withLab((lab) => lab.read((tx) => readActs(tx, { limit: limit.value })));
    if (options.json) for (const act of acts) terminal.out(JSON.stringify(act));
    else for (const line of tableLines(acts, COLUMNS, terminal.columns)) terminal.out(line);
    if (!acts.length) terminal.say(cliText('no-acts'));
    return ENDED;
  },
});
