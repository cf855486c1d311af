import type { ReceivedItem } from '#actions/inputs.ts';
import { receive } from '#actions/receive.ts';
import { readTypedLine, type TypedLine } from '#actions/typed-line.ts';
import type { Outcome } from '#core/stock/refusal.ts';
import { cliText } from '#say/en/cli.ts';
import { doubtText } from '#say/en/doubts.ts';
import { defineCommand, refused, wrongUsage } from '../command.ts';
import { BAGS, readWhole } from '#actions/whole.ts';
import { WRITE_OPTIONS, writeAct } from '../write-act.ts';

export const command = defineCommand({
  name: 'receive',
  summary: 'Take a delivery in: a new bag for each line, or more into a bag.',
  usage:
    'bagatelle receive LINE … [--box BOX] [--from SUPPLIER]      (a LINE is how many, then what)\nbagatelle receive QUANTITY --bag BAG\nbagatelle receive -      (lines from stdin)',
  example: "bagatelle receive '100 4k7 1% 0805' '~50 100n X7R 50V 0603' --box A",
  options: {
    bag: { type: 'word', value: 'BAG', say: 'number for the new bag, or the bag to add to' },
    box: { type: 'word', value: 'BOX', say: 'box for the new bags' },
    place: { type: 'word', value: 'PLACE', say: 'place in the box' },
    from: { type: 'word', value: 'SUPPLIER', say: 'kept with the lots' },
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    const lines = linesOf(words, words[0] === '-' ? await terminal.input() : '');
    if (!lines.length) return wrongUsage(cliText('words-missing', { what: 'LINE' }));
    if (options.bag !== undefined && lines.length > 1) return wrongUsage(cliText('one-line-for-bag'));
    const bag = options.bag === undefined ? null : readWhole(options.bag, '--bag', BAGS);
    if (bag && !bag.ok) return refused(bag.refusal);
    const { box, place, from } = options;
    const more = {
      ...(bag && { bag: bag.value }),
      ...(box !== undefined && { box }),
      ...(place !== undefined && { place }),
      ...(from !== undefined && { lot: { supplier: from } }),
    };
    const items: ReceivedItem[] = [];
    for (const line of lines) {
      const read = readLine(line, bag !== null);
      if (!read.ok) return refused(read.refusal);
      for (const doubt of read.value.doubts) terminal.say(cliText('line-doubt', { line, ...doubtText(doubt) }));
      items.push({ ...read.value.item, ...more });
    }
    return writeAct(terminal, options, {
      action: receive,
      input: (told) => ({ ...told, items }),
      tell: (result) => result.bags.map((balance) => cliText('received', balance)),
    });
  },
});

/** Unquoted words are one line; words with blanks in them are a line each. */
function linesOf(words: readonly string[], input: string): string[] {
  if (words[0] === '-') return input.split('\n').filter((line) => line.trim() !== '');
  if (!words.length) return [];
  return words.some((word) => /\s/.test(word.trim())) ? [...words] : [words.join(' ')];
}

/** Into a bag that is there a number alone is enough: what is in it is known. */
function readLine(line: string, intoBag: boolean): Outcome<TypedLine> {
  if (!intoBag || /\s/.test(line.trim())) return readTypedLine(line);
  const quantity = readWhole(line.trim(), 'quantity');
  return quantity.ok ? { ok: true, value: { item: { quantity: quantity.value }, doubts: [] } } : quantity;
}
