import { setAside } from '#actions/set-aside.ts';
import { oneBag } from '../bag-words.ts';
import { defineCommand } from '../command.ts';
import { WRITE_OPTIONS, writeAct } from '../write-act.ts';
import { cliText } from '#say/en/cli.ts';

export const command = defineCommand({
  name: 'found',
  summary: 'Say that a bag that was astray turned up again.',
  usage: 'bagatelle found BAG',
  example: 'bagatelle found 12',
  options: WRITE_OPTIONS,
  async run({ words, options, terminal }) {
    const bag = oneBag(words);
    if (!bag.ok) return bag.ending;
    return writeAct(terminal, options, {
      action: setAside,
      input: (told) => ({ ...told, bag: bag.value, state: 'sound' as const }),
      tell: (result) => [cliText('set-aside', result)],
    });
  },
});
