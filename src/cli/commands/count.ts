import { count } from '#actions/count.ts';
import { bagAndQuantity } from '../bag-words.ts';
import { defineCommand } from '../command.ts';
import { WRITE_OPTIONS, writeAct } from '../write-act.ts';
import { cliText } from '#say/en/cli.ts';

export const command = defineCommand({
  name: 'count',
  summary: 'Say how many are really in a bag.',
  usage: 'bagatelle count BAG TOTAL',
  example: 'bagatelle count 12 40',
  options: WRITE_OPTIONS,
  async run({ words, options, terminal }) {
    const read = bagAndQuantity(words);
    if (!read.ok) return read.ending;
    return writeAct(terminal, options, {
      action: count,
      input: (told) => ({ ...told, bag: read.bag, total: read.quantity }),
      tell: (result) => [cliText('counted', result)],
    });
  },
});
