import { findBags } from '#actions/find-bags.ts';
import { followStock } from '#actions/follow-stock.ts';
import { foundBag } from '#api/bag-answers.ts';
import type { FoundBag } from '#api/bags.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, JSON_OPTION, refused, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import { readWhole } from '#actions/whole.ts';

const LIMIT = '20';
const COLUMNS: readonly ColumnOf<FoundBag>[] = [
  { head: 'bag', cell: (found) => found.bag, right: true },
  { head: 'box', cell: (found) => found.box },
  { head: 'part', cell: (found) => found.code },
  { head: 'on hand', cell: (found) => found.onHand, right: true },
  { head: 'free', cell: (found) => found.free, right: true },
  { head: 'why', cell: (found) => found.why.join('; '), gives: true },
];

export const command = defineCommand({
  name: 'find',
  summary: 'Find bags by any words: values, sizes, part numbers, bag numbers.',
  usage: 'bagatelle find WORDS [--limit N]',
  example: 'bagatelle find 4k7 0805',
  options: { limit: { type: 'word', value: 'N', say: `at most so many: ${LIMIT} unless said` }, json: JSON_OPTION },
  async run({ words, options, terminal }) {
    if (!words.join('').trim()) return wrongUsage(cliText('words-missing', { what: 'WORDS' }));
    const limit = readWhole(options.limit ?? LIMIT, '--limit', { least: 1, most: 1000 });
    if (!limit.ok) return refused(limit.refusal);
    const found = await withLab(async (lab) => {
      const { index } = await followStock(lab).current();
      return findBags(index, words.join(' '), limit.value).map(foundBag);
    });
    if (options.json) for (const { full: _full, ...one } of found) terminal.out(JSON.stringify(one));
    else for (const line of tableLines(found, COLUMNS, terminal.columns)) terminal.out(line);
    if (!found.length) terminal.say(cliText('nothing-found', { words: words.join(' ') }));
    return ENDED;
  },
});
