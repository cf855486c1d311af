import { pick } from '#actions/pick.ts';
import { bagAndQuantity } from '../bag-words.ts';
import { defineCommand } from '../command.ts';
import { WRITE_OPTIONS, writeAct } from '../write-act.ts';
import { cliText } from '#say/en/cli.ts';

export const command = defineCommand({
  name: 'pick',
  summary: 'Take pieces out of a bag.',
  usage: 'bagatelle pick BAG QUANTITY [--in-hand]',
  example: 'bagatelle pick 12 3',
  options: {
    'in-hand': { type: 'switch', say: 'they are in my hand: books the pick even where the record says less, and a correction' },
    ...WRITE_OPTIONS,
  },
  async run({ words, options, terminal }) {
    const read = bagAndQuantity(words);
    if (!read.ok) return read.ending;
    const { bag, quantity } = read;
    return writeAct(terminal, options, {
      action: pick,
      input: (told) => ({ ...told, bag, quantity, ...(options['in-hand'] && { inHand: true }) }),
      tell: (result) => [cliText('picked', result)],
    });
  },
});
