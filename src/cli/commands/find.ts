import { findBags, type FoundBag } from '#actions/find-bags.ts';
import { followStock } from '#actions/follow-stock.ts';
import { cliText } from '#say/en/cli.ts';
import { defineCommand, ENDED, JSON_OPTION, refused, wrongUsage } from '../command.ts';
import { withLab } from '../lab.ts';
import { tableLines, type ColumnOf } from '../table.ts';
import { readWhole } from '#actions/whole.ts';

const LIMIT = '20';

/** A found bag as the contract has it. */
function foundLine({ bag, why }: FoundBag) {
  const { number, box, code, part, onHand, sure, reserved } = bag;
  return { bag: number, box, code, text: part.text, onHand, free: sure - reserved, why };
}

const COLUMNS: readonly ColumnOf<ReturnType<typeof foundLine>>[] = [
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
      return findBags(index, words.join(' '), limit.value).found.map(foundLine);
    });
    if (options.json) for (const one of found) terminal.out(JSON.stringify(one));
    else for (const line of tableLines(found, COLUMNS, terminal.columns)) terminal.out(line);
    if (!found.length) terminal.say(cliText('nothing-found', { words: words.join(' ') }));
    return ENDED;
  },
});
